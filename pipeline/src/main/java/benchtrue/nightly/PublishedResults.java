package benchtrue.nightly;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The published results: {@code out/<date>} and {@code out/latest}, each one link that is switched by one rename. Where
 * links are refused, the whole folder itself moves to {@code out/<date>}, and {@code latest.txt} holds the date.
 * {@code latest.html} leads to the newest page on every system.
 */
final class PublishedResults {
    private static final String LATEST = "latest";
    private static final String NEXT = ".next-";
    private static final String NAME_ONLY = ".txt";
    private static final String PAGE = "review.html";

    /** Ends the name of a result that another takes the place of. */
    static final String REPLACED = ".replaced";

    private static final Pattern ASIDE =
            Pattern.compile("(" + LATEST + "|\\d{4}-\\d{2}-\\d{2})" + Pattern.quote(REPLACED));

    private final Path out;
    private final Links links;

    PublishedResults(Path out) {
        this(out, Files::createSymbolicLink);
    }

    PublishedResults(Path out, Links links) {
        this.out = out;
        this.links = links;
    }

    /** Makes a link, or throws where the file system or the user may not. */
    interface Links {
        void make(Path link, Path target) throws IOException;
    }

    /**
     * Publishes a whole folder under its date. The latest is the newest date, whichever was run last, but none that lies
     * beyond the horizon: a date mistyped by ten years must not hide every review until then.
     *
     * @param horizon the last day that may have come
     */
    void publish(LocalDate date, Path whole, LocalDate horizon) throws IOException {
        if (!tryToLink(date.toString(), out.relativize(whole))) {
            move(whole, out.resolve(date.toString()));
        }
        Files.deleteIfExists(out.resolve(date + NAME_ONLY));
        Map.Entry<LocalDate, Path> come = results().floorEntry(horizon);
        LocalDate newest = come == null ? date : come.getKey();
        if (tryToLink(LATEST, Path.of(newest.toString()))) {
            Files.deleteIfExists(out.resolve(LATEST + NAME_ONLY));
        } else {
            WholeFile.write(out.resolve(LATEST + NAME_ONLY), newest + "\n");
            if (Files.isDirectory(out.resolve(LATEST), LinkOption.NOFOLLOW_LINKS)) {
                aside(out.resolve(LATEST)); // A copy of an older result, which nothing would ever bring up to date.
            }
        }
        WholeFile.write(out.resolve(LATEST + ".html"), leadingTo(newest));
        RunFolder.sync(out);
    }

    private static String leadingTo(LocalDate date) {
        String page = date + "/" + PAGE;
        return "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>The newest review</title>"
                + "<meta http-equiv=\"refresh\" content=\"0; url=" + page + "\"></head><body><p><a href=\"" + page
                + "\">The review of " + date + "</a></p></body></html>\n";
    }

    /** Returns the dates of results beyond the last day that may have come. */
    List<LocalDate> beyond(LocalDate horizon) throws IOException {
        return List.copyOf(results().tailMap(horizon, false).keySet());
    }

    /** Returns the folder of the newest result before a date. */
    Optional<Result> before(LocalDate date) throws IOException {
        return Optional.ofNullable(results().lowerEntry(date)).map(e -> new Result(e.getKey(), e.getValue()));
    }

    /**
     * One published result.
     *
     * @param folder where it stands
     */
    record Result(LocalDate asOf, Path folder) {}

    /** Makes or switches a link by one rename; returns whether links can be made here. */
    private boolean tryToLink(String name, Path target) throws IOException {
        Path next = out.resolve(NEXT + name);
        Files.deleteIfExists(next);
        try {
            links.make(next, target);
        } catch (UnsupportedOperationException | FileSystemException refused) {
            return false;
        }
        Path link = out.resolve(name);
        if (Files.isDirectory(link, LinkOption.NOFOLLOW_LINKS)) {
            aside(link); // A copy that followed links left a folder, onto which no link can be renamed.
        }
        Files.move(next, link, StandardCopyOption.ATOMIC_MOVE);
        return true;
    }

    private void move(Path whole, Path named) throws IOException {
        if (Files.exists(named, LinkOption.NOFOLLOW_LINKS)) {
            aside(named);
        }
        Files.move(whole, named, StandardCopyOption.ATOMIC_MOVE);
    }

    private void aside(Path result) throws IOException {
        Path runs = OwnerOnly.folder(out.resolve(RunFolder.RUNS));
        Files.move(
                result,
                RunFolder.free(runs, result.getFileName().toString(), REPLACED),
                StandardCopyOption.ATOMIC_MOVE);
    }

    /** Puts back a result that was set aside for one that never came: the run was killed between two renames. */
    void restore() throws IOException {
        Path runs = out.resolve(RunFolder.RUNS);
        for (Path aside : Files.isDirectory(runs) ? entries(runs) : List.<Path>of()) {
            Matcher name = ASIDE.matcher(aside.getFileName().toString());
            if (name.matches()
                    && !Files.exists(out.resolve(name.group(1)), LinkOption.NOFOLLOW_LINKS)
                    && !Files.exists(out.resolve(name.group(1) + NAME_ONLY))) {
                Files.move(aside, out.resolve(name.group(1)), StandardCopyOption.ATOMIC_MOVE);
            }
        }
    }

    /** Returns where each date's result stands. */
    TreeMap<LocalDate, Path> results() throws IOException {
        TreeMap<LocalDate, Path> results = new TreeMap<>();
        if (Files.isDirectory(out)) {
            for (Path entry : entries(out)) {
                Optional<LocalDate> date = date(entry);
                if (date.isPresent() && Files.isDirectory(folder(entry))) {
                    results.put(date.get(), folder(entry));
                }
            }
        }
        return results;
    }

    private static Optional<LocalDate> date(Path entry) {
        String name = entry.getFileName().toString();
        try {
            return Optional.of(LocalDate.parse(name.endsWith(NAME_ONLY) ? name.substring(0, name.length() - 4) : name));
        } catch (DateTimeParseException notAResult) {
            return Optional.empty();
        }
    }

    private Path folder(Path entry) throws IOException {
        boolean nameOnly = entry.getFileName().toString().endsWith(NAME_ONLY);
        return nameOnly
                ? out.resolve(Files.readString(entry, StandardCharsets.UTF_8).strip())
                : entry;
    }

    /** Takes a date's result off the shelf; its folder stays among the runs. */
    void forget(LocalDate date) throws IOException {
        Path result = out.resolve(date.toString());
        if (Files.isSymbolicLink(result)) {
            Files.delete(result);
        } else if (Files.isDirectory(result)) {
            aside(result);
        }
        Files.deleteIfExists(out.resolve(date + NAME_ONLY));
        RunFolder.sync(out);
    }

    private static List<Path> entries(Path folder) throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return found.sorted().toList();
        }
    }
}
