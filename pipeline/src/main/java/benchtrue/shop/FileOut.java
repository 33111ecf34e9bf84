package benchtrue.shop;

import java.io.BufferedWriter;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A file that is being written. It is closed as soon as the disk takes no more, which is told once; what comes afterwards is
 * dropped. For a writer of older Java versions that can't empty its buffers never closes what it writes to.
 */
public final class FileOut extends FilterOutputStream {
    private static final int LETTERS = 1 << 16;
    private boolean failed;

    /** Takes the file that is written to, without a buffer of its own. */
    public FileOut(OutputStream file) {
        super(file);
    }

    /** Creates or empties a file and returns what writes text to it as UTF-8, letters that are none as a question mark. */
    public static Writer text(Path file) throws IOException {
        return text(Files.newOutputStream(file));
    }

    static Writer text(OutputStream file) {
        return new BufferedWriter(new OutputStreamWriter(new FileOut(file), StandardCharsets.UTF_8), LETTERS);
    }

    @Override
    public void write(int octet) throws IOException {
        write(new byte[] {(byte) octet}, 0, 1);
    }

    @Override
    public void write(byte[] octets, int from, int length) throws IOException {
        tellOnce(() -> out.write(octets, from, length));
    }

    @Override
    public void flush() throws IOException {
        tellOnce(out::flush);
    }

    private interface Step {
        void take() throws IOException;
    }

    private void tellOnce(Step step) throws IOException {
        if (failed) {
            return;
        }
        try {
            step.take();
        } catch (IOException full) {
            failed = true;
            closeAfter(full);
            throw full;
        }
    }

    private void closeAfter(IOException full) {
        try {
            out.close();
        } catch (IOException also) {
            full.addSuppressed(also);
        }
    }
}
