package benchtrue.nightly;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A small text file that is there as it was or as it will be, never in between. */
final class WholeFile {
    private WholeFile() {}

    static void write(Path file, String text) throws IOException {
        Path next = OwnerOnly.file(file.resolveSibling(".next-" + file.getFileName()));
        Files.writeString(next, text, StandardCharsets.UTF_8);
        RunFolder.sync(next);
        Files.move(next, file, StandardCopyOption.ATOMIC_MOVE);
    }
}
