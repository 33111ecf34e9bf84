package benchtrue.nightly;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * The folder of one run while it is made: {@code out/.runs/<date>-<digest>.partial}. Only who holds the shop's lock makes
 * or removes such folders, so that one found at the beginning of a run has lost its owner.
 */
final class RunFolder {
    static final String RUNS = ".runs";
    static final String PARTIAL = ".partial";
    private final Path partial;
    private final Path whole;
    private final Map<Path, FileDigest> early = new ConcurrentHashMap<>();

    private RunFolder(Path partial, Path whole) {
        this.partial = partial;
        this.whole = whole;
    }

    /** Begins a run's folder under a name that no earlier run took. */
    static RunFolder begin(Path out, String name) throws IOException {
        Path runs = out.resolve(RUNS);
        OwnerOnly.folder(runs);
        Path whole = free(runs, name, "");
        Path partial = runs.resolve(whole.getFileName() + PARTIAL);
        OwnerOnly.folder(partial);
        return new RunFolder(partial, whole);
    }

    /** Returns a path in a folder that nothing has: the name, else the name with a number, and its ending. */
    static Path free(Path folder, String name, String ending) {
        Path path = folder.resolve(name + ending);
        for (int again = 2; Files.exists(path, LinkOption.NOFOLLOW_LINKS); again++) {
            path = folder.resolve(name + "-" + again + ending);
        }
        return path;
    }

    /** Returns whether a folder belongs to a run that has not ended. */
    static boolean isPartial(Path folder) {
        return folder.getFileName().toString().endsWith(PARTIAL);
    }

    /** Returns the folder to write into. */
    Path path() {
        return partial;
    }

    /** Digests a long file as soon as it is whole, so that the end of the run does not wait for it. */
    void digest(Path file) throws IOException {
        early.put(file, FileDigest.of(partial, file));
    }

    /** Returns the digest of every file, in the order of their names. */
    List<FileDigest> digests() throws IOException {
        return digests(partial, early);
    }

    /** Digests every file in a folder, in the order of their names. */
    static List<FileDigest> digests(Path folder) throws IOException {
        return digests(folder, Map.of());
    }

    private static List<FileDigest> digests(Path folder, Map<Path, FileDigest> known) throws IOException {
        Map<Path, FileDigest> digests = new ConcurrentHashMap<>(known);
        List<SideBySide.Work> digesting = tree(folder).stream()
                .filter(file -> !known.containsKey(file) && !Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS))
                .sorted(Comparator.comparingLong((Path file) -> file.toFile().length())
                        .reversed())
                .<SideBySide.Work>map(file -> () -> digests.put(file, FileDigest.of(folder, file)))
                .toList();
        SideBySide.run(digesting);
        return digests.values().stream()
                .sorted(Comparator.comparing(FileDigest::file))
                .toList();
    }

    /** Brings every byte to the disk under the owner's permissions and gives the folder its name; returns it. */
    Path seal() throws IOException {
        restrict(partial);
        Files.move(partial, whole, StandardCopyOption.ATOMIC_MOVE);
        sync(whole.getParent());
        return whole;
    }

    /** Brings every byte of a folder to the disk under the owner's permissions. */
    static void restrict(Path folder) throws IOException {
        for (Path file : tree(folder)) {
            OwnerOnly.restrict(file);
            sync(file);
        }
    }

    /** Removes the folder where the run can't go on. */
    void abandon() throws IOException {
        if (Files.exists(partial)) {
            remove(partial);
        }
    }

    /** Removes a whole run; a kill meanwhile leaves a folder that the next run knows as unfinished. */
    static void discard(Path whole) throws IOException {
        Path partial = whole.resolveSibling(whole.getFileName() + PARTIAL);
        Files.move(whole, partial, StandardCopyOption.ATOMIC_MOVE);
        remove(partial);
    }

    static void remove(Path folder) throws IOException {
        List<Path> tree = new ArrayList<>(tree(folder));
        tree.sort(Comparator.reverseOrder());
        for (Path file : tree) {
            Files.delete(file);
        }
    }

    private static List<Path> tree(Path folder) throws IOException {
        try (Stream<Path> found = Files.walk(folder)) {
            return found.sorted().toList();
        }
    }

    /** Brings a file, or a folder's list of names, to the disk. */
    static void sync(Path file) throws IOException {
        if (Files.isDirectory(file) && !OwnerOnly.POSIX) {
            return; // Elsewhere a folder can't be opened, and its names are kept by the file system's own journal.
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }
}
