package benchtrue.workbook;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Rows on their way to the disk. A full disk is told once; what is still in the buffers then is dropped, since a writer of
 * older Java versions that fails to flush leaves the file open for ever.
 */
final class RowsOut extends FilterOutputStream {
    private boolean failed;

    RowsOut(OutputStream file) {
        super(file);
    }

    @Override
    public void write(int octet) throws IOException {
        write(new byte[] {(byte) octet}, 0, 1);
    }

    @Override
    public void write(byte[] octets, int from, int length) throws IOException {
        if (failed) {
            return;
        }
        try {
            out.write(octets, from, length);
        } catch (IOException e) {
            failed = true;
            throw e;
        }
    }
}
