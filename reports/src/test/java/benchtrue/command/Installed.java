package benchtrue.command;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.compress.compressors.gzip.GzipCompressorInputStream;

/** The installation archive that the build left, and what comes out of it. */
final class Installed {
    /** What a process said and how it ended. */
    record Ended(int code, String out, String err) {}

    private final Path folder;
    private final Path home;

    private Installed(Path folder, Path home) {
        this.folder = folder;
        this.home = home;
    }

    static Path archive() {
        return Path.of(System.getProperty("benchtrue.archive"));
    }

    static List<TarArchiveEntry> entries() throws IOException {
        List<TarArchiveEntry> entries = new ArrayList<>();
        try (TarArchiveInputStream tar = open()) {
            for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
                entries.add(entry);
            }
        }
        return entries;
    }

    private static TarArchiveInputStream open() throws IOException {
        InputStream bytes = new BufferedInputStream(Files.newInputStream(archive()));
        return new TarArchiveInputStream(new GzipCompressorInputStream(bytes));
    }

    /** Unpacks the archive into an empty folder. */
    static Installed in(Path folder) throws IOException {
        try (TarArchiveInputStream tar = open()) {
            for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
                Path file = folder.resolve(entry.getName());
                if (entry.isDirectory()) {
                    Files.createDirectories(file);
                } else {
                    Files.createDirectories(file.getParent());
                    Files.copy(tar, file);
                    boolean runs = (entry.getMode() & 0100) != 0;
                    Files.setPosixFilePermissions(
                            file, PosixFilePermissions.fromString(runs ? "rwxr-xr-x" : "rw-r--r--"));
                }
            }
        }
        try (var found = Files.list(folder)) {
            return new Installed(folder, found.toList().get(0));
        }
    }

    Path home() {
        return home;
    }

    Path launcher() {
        return home.resolve("bin/benchtrue");
    }

    /** Runs the launcher in the folder, with nothing in its environment but what is given. */
    Ended run(Map<String, String> environment, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(launcher().toString()));
        command.addAll(List.of(arguments));
        return run(folder, environment, command);
    }

    static Ended run(Path folder, Map<String, String> environment, List<String> command)
            throws IOException, InterruptedException {
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        ProcessBuilder process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        process.environment().clear();
        process.environment().putAll(environment);
        Process running = process.start();
        if (!running.waitFor(5, TimeUnit.MINUTES)) {
            running.destroyForcibly();
            throw new IllegalStateException(command + " did not end within five minutes");
        }
        return new Ended(running.exitValue(), Files.readString(out), Files.readString(err));
    }
}
