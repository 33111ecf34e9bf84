package benchtrue.nightly;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Clears {@code out/} of what nobody needs: runs that never ended, runs that were replaced, results older than the owner
 * keeps. Only for the holder of the shop's lock, since nobody else makes such folders. What the program did not write, or
 * what somebody changed since, is never removed.
 */
final class RunCleanup {
    private static final String KEPT = "kept";

    /** The launcher makes it and names it to Java as the place for temporary files. */
    private static final String PASSING = ".passing";

    private static final Pattern RUN = Pattern.compile("(latest|\\d{4}-\\d{2}-\\d{2})(-[0-9a-f]{16})?(-\\d+)?("
            + Pattern.quote(PublishedResults.REPLACED) + ")?(" + Pattern.quote(RunFolder.PARTIAL) + ")?");

    private final Path out;
    private final Path runs;
    private final PublishedResults shelf;

    RunCleanup(Path out, PublishedResults shelf) {
        this.out = out;
        this.runs = out.resolve(RunFolder.RUNS);
        this.shelf = shelf;
    }

    /** Clears what a killed run left in the folder for files that pass. */
    void passing() throws IOException {
        Path passing = out.resolve(PASSING);
        if (Files.isDirectory(passing, LinkOption.NOFOLLOW_LINKS)) {
            RunFolder.remove(passing);
            OwnerOnly.folder(passing);
        }
    }

    /** Clears runs that no result points at; returns what the owner should know of it, in words. */
    List<String> unused() throws IOException {
        List<String> notes = new ArrayList<>();
        if (!Files.isDirectory(runs)) {
            return notes;
        }
        Set<Path> used = new HashSet<>();
        for (Path folder : shelf.results().values()) {
            used.add(folder.toRealPath());
        }
        for (Path run : ownRuns()) {
            if (RunFolder.isPartial(run)) {
                RunFolder.remove(run);
            } else if (!used.contains(run.toRealPath())) {
                clear(run, notes);
            }
        }
        return notes;
    }

    private List<Path> ownRuns() throws IOException {
        try (Stream<Path> found = Files.list(runs)) {
            return found.filter(run -> RUN.matcher(run.getFileName().toString()).matches())
                    .sorted()
                    .toList();
        }
    }

    private void clear(Path run, List<String> notes) throws IOException {
        if (asWritten(run)) {
            RunFolder.discard(run);
            return;
        }
        String name = run.getFileName().toString().replace(PublishedResults.REPLACED, "");
        Path kept = RunFolder.free(OwnerOnly.folder(out.resolve(KEPT)), name, "");
        Files.move(run, kept, StandardCopyOption.ATOMIC_MOVE);
        notes.add("Files of an earlier result were changed by hand; they are kept in " + kept + ".");
    }

    private static boolean asWritten(Path run) {
        try {
            return new VerifyResult().verify(run).isEmpty();
        } catch (IOException unreadable) {
            return false; // Whatever it is, it is not as the program wrote it, and so not the program's to remove.
        }
    }

    /**
     * Removes results older than the newest few, with their links; returns what could not be removed and why.
     *
     * @param keep how many results stay; 0 keeps all
     * @param justPublished stays whatever its date
     */
    List<String> old(int keep, LocalDate justPublished) throws IOException {
        List<String> notes = new ArrayList<>();
        TreeMap<LocalDate, Path> results = shelf.results();
        results.remove(justPublished);
        int surplus = keep == 0 ? 0 : results.size() + 1 - keep;
        for (LocalDate date :
                results.keySet().stream().limit(Math.max(0, surplus)).toList()) {
            Path run = results.get(date).toRealPath();
            if (isOwn(run) && asWritten(run)) {
                shelf.forget(date);
            } else {
                notes.add("The result of " + date + " is older than you keep but was changed by hand; it stays.");
            }
        }
        notes.addAll(unused());
        return notes;
    }

    private boolean isOwn(Path run) throws IOException {
        return List.of(runs.toRealPath(), out.toRealPath()).contains(run.getParent())
                && RUN.matcher(run.getFileName().toString()).matches();
    }
}
