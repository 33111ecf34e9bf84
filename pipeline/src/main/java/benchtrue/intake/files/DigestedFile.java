package benchtrue.intake.files;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import benchtrue.shop.Sha256;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;

/**
 * A file's bytes, digested while they are read; never more of them than were there at the beginning, which may be when somebody
 * first looked at the file.
 */
public final class DigestedFile extends InputStream {
    private final Path path;
    private final String name;
    private final InputStream in;
    private final Stamp stamp;
    private final MessageDigest digest;
    private long read;

    /** What shows that a file changed: its size in bytes, and when it was last written. */
    public record Stamp(long size, FileTime written) {
        public static Stamp of(Path path) throws IOException {
            return new Stamp(Files.size(path), Files.getLastModifiedTime(path));
        }
    }

    public DigestedFile(Path path, String name) throws IOException {
        this(path, name, Stamp.of(path));
    }

    /**
     * Opens a file that was looked at before.
     *
     * @param stamp of the file as it was then, and must still be when it has been read
     */
    public DigestedFile(Path path, String name, Stamp stamp) throws IOException {
        this.path = path;
        this.name = name;
        this.stamp = stamp;
        in = Files.newInputStream(path);
        digest = Sha256.begin();
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        int got = in.read(into, offset, (int) Math.min(length, stamp.size - read));
        if (got <= 0) {
            return length == 0 ? 0 : -1;
        }
        digest.update(into, offset, got);
        read += got;
        return got;
    }

    /** Returns how many bytes there were at the beginning. */
    public long size() {
        return stamp.size;
    }

    /** Reads what is left and returns the digest; refuses a file that changed meanwhile. */
    public String finish() throws IOException {
        byte[] rest = new byte[1 << 16];
        while (read(rest, 0, rest.length) >= 0) {
            // only digested
        }
        if (read != stamp.size || !Stamp.of(path).equals(stamp)) {
            throw changed(name);
        }
        return Sha256.digits(digest);
    }

    /** Returns the refusal of a file that is not what it was when somebody first looked at it. */
    public static Refusal changed(String name) {
        return new Refusal(
                ExitCode.READ_FAILED,
                name + ": found that the file changed while it was read, expected it to stay as"
                        + " it was. Wait until the export is finished and run again.");
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
