package benchtrue.nightly;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file of the user's only that is there as it was or as it will be, never in between. */
final class WholeFile {
    private WholeFile() {}

    /** Writes what a file holds. */
    interface Content {
        void write(Path partial) throws IOException;
    }

    static void write(Path file, String text) throws IOException {
        write(file, partial -> Files.writeString(partial, text, StandardCharsets.UTF_8));
    }

    /** Writes beside the name and renames; makes the folder where it is missing. */
    static void write(Path file, Content content) throws IOException {
        OwnerOnly.folder(file.getParent());
        Path partial = file.resolveSibling(file.getFileName() + RunFolder.PARTIAL);
        try {
            content.write(OwnerOnly.file(partial));
            RunFolder.sync(partial);
            move(partial, file);
        } finally {
            Files.deleteIfExists(partial);
        }
    }

    /** Moves a file under another name, by one rename. */
    static void move(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        RunFolder.sync(to.getParent());
        if (!from.getParent().equals(to.getParent())) {
            RunFolder.sync(from.getParent());
        }
    }
}
