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

/** A file's bytes, digested while they are read; never more of them than were there at the beginning. */
public final class DigestedFile extends InputStream {
    private final Path path;
    private final String name;
    private final InputStream in;
    private final long size;
    private final MessageDigest digest;
    private final FileTime changed;
    private long read;

    public DigestedFile(Path path, String name) throws IOException {
        this.path = path;
        this.name = name;
        size = Files.size(path);
        changed = Files.getLastModifiedTime(path);
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
        int got = in.read(into, offset, (int) Math.min(length, size - read));
        if (got <= 0) {
            return length == 0 ? 0 : -1;
        }
        digest.update(into, offset, got);
        read += got;
        return got;
    }

    /** Returns how many bytes there were at the beginning. */
    public long size() {
        return size;
    }

    /** Reads what is left and returns the digest; refuses a file that changed meanwhile. */
    public String finish() throws IOException {
        byte[] rest = new byte[1 << 16];
        while (read(rest, 0, rest.length) >= 0) {
            // only digested
        }
        if (read != size
                || Files.size(path) != size
                || !Files.getLastModifiedTime(path).equals(changed)) {
            throw new Refusal(
                    ExitCode.READ_FAILED,
                    name + ": found that the file changed while it was read, expected it to stay as"
                            + " it was. Wait until the export is finished and run again.");
        }
        return Sha256.digits(digest);
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
