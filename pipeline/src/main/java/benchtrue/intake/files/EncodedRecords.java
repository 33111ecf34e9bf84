package benchtrue.intake.files;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Records whose reader hands over cells as strings: each cell becomes a slice of one array of UTF-8. */
public abstract class EncodedRecords implements Records {
    private byte[] bytes = new byte[1 << 12];
    private int[] ends = new int[17];
    private int cells;

    /** Forgets the cells of the record before. */
    protected final void clear() {
        cells = 0;
    }

    /** Adds the next cell of the record. */
    protected final void add(String text) {
        int at = ends[cells];
        int length = text.length();
        if (at + 3 * length > bytes.length) {
            bytes = Arrays.copyOf(bytes, 2 * (at + 3 * length));
        }
        if (cells + 1 == ends.length) {
            ends = Arrays.copyOf(ends, 2 * ends.length);
        }
        int i = 0;
        for (; i < length && text.charAt(i) < 0x80; i++) {
            bytes[at + i] = (byte) text.charAt(i);
        }
        ends[++cells] = i == length ? at + length : encoded(text, at);
    }

    private int encoded(String text, int at) {
        byte[] letters = text.getBytes(StandardCharsets.UTF_8);
        System.arraycopy(letters, 0, bytes, at, letters.length);
        return at + letters.length;
    }

    @Override
    public final int size() {
        return cells;
    }

    @Override
    public final byte[] bytes() {
        return bytes;
    }

    @Override
    public final int start(int cell) {
        return ends[cell];
    }

    @Override
    public final int end(int cell) {
        return ends[cell + 1];
    }
}
