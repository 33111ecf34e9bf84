package benchtrue.nightly;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The published results: {@code out/<date>} and {@code out/latest}, each one link that is switched by one rename. Where
 * links are refused, {@code <date>.txt} and {@code latest.txt} hold the name of the folder instead.
 */
final class PublishedResults {
    private static final String LATEST = "latest";
    private static final String NEXT = ".next-";
    private static final String NAME_ONLY = ".txt";
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

    /** Publishes a whole folder under its date; the latest is the newest date, whichever was run last. */
    void publish(LocalDate date, Path whole) throws IOException {
        TreeMap<LocalDate, Path> before = results();
        point(date.toString(), out.relativize(whole));
        if (before.isEmpty() || !before.lastKey().isAfter(date)) {
            boolean linked = Files.isSymbolicLink(out.resolve(date.toString()));
            point(LATEST, linked ? Path.of(date.toString()) : out.relativize(whole));
        }
        RunFolder.sync(out);
    }

    /** Returns the folder of the newest result before a date. */
    Optional<Result> before(LocalDate date) throws IOException {
        return Optional.ofNullable(results().lowerEntry(date)).map(e -> new Result(e.getKey(), e.getValue()));
    }

    /**
     * One published result.
     *
     * @param asOf its as-of date
     * @param folder where it stands
     */
    record Result(LocalDate asOf, Path folder) {}

    private void point(String name, Path target) throws IOException {
        Path next = out.resolve(NEXT + name);
        Files.deleteIfExists(next);
        try {
            links.make(next, target);
            Files.move(next, out.resolve(name), StandardCopyOption.ATOMIC_MOVE);
            Files.deleteIfExists(out.resolve(name + NAME_ONLY));
        } catch (UnsupportedOperationException | FileSystemException refused) {
            WholeFile.write(out.resolve(name + NAME_ONLY), FileDigest.name(Path.of(""), target) + "\n");
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

    /** Takes a date's result off the shelf; its folder stays. */
    void forget(LocalDate date) throws IOException {
        Files.deleteIfExists(out.resolve(date.toString()));
        Files.deleteIfExists(out.resolve(date + NAME_ONLY));
        RunFolder.sync(out);
    }

    private static List<Path> entries(Path folder) throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return found.sorted().toList();
        }
    }
}
