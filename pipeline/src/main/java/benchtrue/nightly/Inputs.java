package benchtrue.nightly;

import benchtrue.settings.ReadSettings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/** Every file of the shop folder that a run reads, as it was when the run began. */
final class Inputs {
    private static final List<String> FOLDERS = List.of("exports", "price-book", "decisions", "close");
    private final Path shop;
    private final List<Seen> seen;

    private Inputs(Path shop, List<Seen> seen) {
        this.shop = shop;
        this.seen = List.copyOf(seen);
    }

    /** A file with what tells cheaply whether somebody changed it since. */
    private record Seen(FileDigest digest, long modifiedMillis) {}

    /** Reads and digests all inputs, in the order of their names. */
    static Inputs of(Path shop) {
        try {
            List<Seen> seen = new ArrayList<>();
            for (Path file : files(shop)) {
                seen.add(new Seen(FileDigest.of(shop, file), modified(file)));
            }
            return new Inputs(shop, seen);
        } catch (IOException e) {
            throw new Refusal(
                    ExitCode.READ_FAILED, "Reading the shop folder failed: " + e + ". Nothing was published.", e);
        }
    }

    private static List<Path> files(Path shop) throws IOException {
        List<Path> files = new ArrayList<>();
        Path settings = shop.resolve(ReadSettings.FILE);
        if (Files.isRegularFile(settings)) {
            files.add(settings);
        }
        for (String name : FOLDERS) {
            Path folder = shop.resolve(name);
            if (Files.isDirectory(folder)) {
                try (Stream<Path> found = Files.walk(folder)) {
                    found.filter(Files::isRegularFile).forEach(files::add);
                }
            }
        }
        files.sort(Comparator.comparing(file -> FileDigest.name(shop, file)));
        return files;
    }

    private static long modified(Path file) throws IOException {
        return Files.getLastModifiedTime(file).toMillis();
    }

    List<FileDigest> files() {
        return seen.stream().map(Seen::digest).toList();
    }

    /** Returns sixteen hexadecimal digits that stand for all names and contents. */
    String digest() {
        MessageDigest all = FileDigest.digester();
        for (FileDigest file : files()) {
            all.update((file.sha256() + "  " + file.file() + "\n").getBytes(StandardCharsets.UTF_8));
        }
        return HexFormat.of().formatHex(all.digest()).substring(0, 16);
    }

    /** Refuses the run where an input was changed, added or taken away since it began. */
    void refuseIfChanged() {
        try {
            List<Path> now = files(shop);
            List<String> names =
                    now.stream().map(file -> FileDigest.name(shop, file)).toList();
            if (!names.equals(files().stream().map(FileDigest::file).toList())) {
                throw changed("a file was added or taken away");
            }
            for (int i = 0; i < now.size(); i++) {
                BasicFileAttributes file = Files.readAttributes(now.get(i), BasicFileAttributes.class);
                boolean same = file.size() == seen.get(i).digest.bytes()
                        && file.lastModifiedTime().toMillis() == seen.get(i).modifiedMillis;
                if (!same) {
                    throw changed(names.get(i) + " was changed");
                }
            }
        } catch (IOException e) {
            throw new Refusal(
                    ExitCode.READ_FAILED,
                    "The shop folder vanished while it was read: " + e + ". Nothing was published.",
                    e);
        }
    }

    private static Refusal changed(String what) {
        return new Refusal(
                ExitCode.READ_FAILED,
                "While the run was reading, " + what
                        + ". Nothing was published. Run again when no export is being written.");
    }
}
