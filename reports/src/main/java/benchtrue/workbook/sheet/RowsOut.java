package benchtrue.workbook.sheet;

import benchtrue.shop.FileOut;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;

/**
 * Rows on their way to the disk as UTF-8; nearly all of a sheet's markup is ASCII, which takes one byte a letter. Not
 * thread-safe.
 */
final class RowsOut extends Writer {
    private static final int ROOM = 1 << 16;
    private static final int ASCII = 0x80;

    private final OutputStream file;
    private final byte[] buffer = new byte[ROOM];
    private int used;

    /** Takes the file that is written to, without a buffer of its own. */
    RowsOut(OutputStream file) {
        this.file = new FileOut(file);
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        room(length);
        int end = from + Math.min(length, ROOM);
        int at = used;
        for (int i = from; i < end; i++) {
            char letter = text.charAt(i);
            if (letter >= ASCII) {
                end = i;
            } else {
                buffer[at++] = (byte) letter;
            }
        }
        used = at;
        if (end < from + length) {
            encoded(text.substring(end, from + length));
        }
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
        write(String.valueOf(text, from, length), 0, length);
    }

    private void encoded(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        room(bytes.length);
        if (bytes.length > ROOM) {
            file.write(bytes);
        } else {
            System.arraycopy(bytes, 0, buffer, used, bytes.length);
            used += bytes.length;
        }
    }

    private void room(int bytes) throws IOException {
        if (used + bytes > ROOM) {
            empty();
        }
    }

    @Override
    public void flush() throws IOException {
        empty();
        file.flush();
    }

    private void empty() throws IOException {
        int full = used;
        used = 0;
        file.write(buffer, 0, full);
    }

    @Override
    public void close() throws IOException {
        try (file) {
            flush();
        }
    }
}
