package benchtrue.nightly;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A file's content in one line.
 *
 * @param file path below the folder it belongs to, parts separated by {@code /} on every machine
 * @param bytes how long it is
 * @param sha256 SHA-256 of its bytes, in hexadecimal (FIPS 180-4)
 */
public record FileDigest(String file, long bytes, String sha256) {
    private static final int ROOM = 1 << 16;

    /** Reads a file below a folder. */
    public static FileDigest of(Path folder, Path file) throws IOException {
        MessageDigest digest = digester();
        byte[] buffer = new byte[ROOM];
        long bytes = 0;
        try (InputStream in = Files.newInputStream(file)) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                digest.update(buffer, 0, read);
                bytes += read;
            }
        }
        return new FileDigest(name(folder, file), bytes, HexFormat.of().formatHex(digest.digest()));
    }

    static String name(Path folder, Path file) {
        return folder.relativize(file).toString().replace('\\', '/');
    }

    static MessageDigest digester() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
