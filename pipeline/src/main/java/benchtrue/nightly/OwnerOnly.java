package benchtrue.nightly;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/**
 * Folders and files that only the user of the program may open: results hold wages and costs. Where a system has other
 * rules for who may open a file, those of the folder above apply.
 */
final class OwnerOnly {
    static final boolean POSIX =
            FileSystems.getDefault().supportedFileAttributeViews().contains("posix");

    private static final Set<PosixFilePermission> FOLDER = PosixFilePermissions.fromString("rwx------");
    private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-------");

    private OwnerOnly() {}

    /** Makes a folder and those above it where they are missing; one that is there keeps its permissions. */
    static Path folder(Path folder) throws IOException {
        return POSIX
                ? Files.createDirectories(folder, PosixFilePermissions.asFileAttribute(FOLDER))
                : Files.createDirectories(folder);
    }

    /** Begins an empty file; what a stopped run left under its name goes. */
    static Path file(Path file) throws IOException {
        Files.deleteIfExists(file);
        return POSIX ? Files.createFile(file, PosixFilePermissions.asFileAttribute(FILE)) : Files.createFile(file);
    }

    static void restrict(Path file) throws IOException {
        if (POSIX) {
            Files.setPosixFilePermissions(file, Files.isDirectory(file) ? FOLDER : FILE);
        }
    }
}
