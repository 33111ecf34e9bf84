package benchtrue.nightly;

import benchtrue.shop.Sha256;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;

/**
 * A file's content in one line.
 *
 * @param file path below the folder it belongs to, parts separated by {@code /} on every machine
 * @param sha256 SHA-256 of its bytes, in hexadecimal (FIPS 180-4)
 */
public record FileDigest(String file, long bytes, String sha256) {
    private static final int ROOM = 1 << 16;

    /** Reads a file below a folder. */
    public static FileDigest of(Path folder, Path file) throws IOException {
        MessageDigest digest = Sha256.begin();
        byte[] buffer = new byte[ROOM];
        long bytes = 0;
        try (InputStream in = Files.newInputStream(file)) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                digest.update(buffer, 0, read);
                bytes += read;
            }
        }
        return new FileDigest(name(folder, file), bytes, Sha256.digits(digest));
    }

    static String name(Path folder, Path file) {
        return folder.relativize(file).toString().replace('\\', '/');
    }
}
