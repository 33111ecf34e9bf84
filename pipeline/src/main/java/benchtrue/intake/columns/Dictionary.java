package benchtrue.intake.columns;

import benchtrue.intake.cells.CellFormat;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Ints;
import benchtrue.shop.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Distinct texts of a column, numbered in the order they were met; code 0 is the empty text. Texts lie end to end in one
 * array of UTF-8, so that ten million keys cost little more than their letters. A text of another {@link CellFormat} is
 * another text, since it may say something else.
 */
public final class Dictionary {
    /** Longest text that can be used, in bytes. */
    public static final int LONGEST = 1_000;

    /** What is kept of a longer one: enough to be too long again when it comes back. */
    public static final int KEPT = LONGEST + 1;

    private static final int LARGEST = Integer.MAX_VALUE - 16 - KEPT;
    private byte[] letters = new byte[256];
    private int used;
    private final Ints ends = new Ints();
    private final Ints hashes = new Ints();
    private int[] slots = new int[64];

    public Dictionary() {
        add(new byte[0], 0, 0, 0, 0);
    }

    public int size() {
        return ends.size();
    }

    /** Returns the code of a text, a new one where it was not met before. */
    public int code(byte[] bytes, int start, int end, int format) {
        if (start == end) {
            return 0;
        }
        int hash = hash(bytes, start, end, format);
        for (int slot = hash & (slots.length - 1); ; slot = (slot + 1) & (slots.length - 1)) {
            int code = slots[slot] - 1;
            if (code < 0) {
                return add(bytes, start, end, format, hash);
            }
            if (hashes.get(code) == hash && same(code, bytes, start, end, format)) {
                return code;
            }
        }
    }

    private static int hash(byte[] bytes, int start, int end, int format) {
        int hash = format;
        for (int i = start; i < end; i++) {
            hash = hash * 31 + bytes[i];
        }
        hash *= 0x9E3779B1;
        return hash ^ (hash >>> 15);
    }

    private boolean same(int code, byte[] bytes, int start, int end, int format) {
        int from = ends.get(code - 1);
        int length = end - start;
        if (letters[from] != format || ends.get(code) - from - 1 != length) {
            return false;
        }
        // A plain loop: texts are short, and it is fast before the compiler has warmed up.
        for (int i = 0; i < length; i++) {
            if (letters[from + 1 + i] != bytes[start + i]) {
                return false;
            }
        }
        return true;
    }

    private int add(byte[] bytes, int start, int end, int format, int hash) {
        int length = end - start;
        if (used > LARGEST - length) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    "A column holds more than two thousand million letters. Split the shop's history over two folders.");
        }
        if (used + length + 1 > letters.length) {
            letters = Arrays.copyOf(letters, (int) Math.min(LARGEST + KEPT, letters.length * 3L / 2 + length));
        }
        letters[used++] = (byte) format;
        System.arraycopy(bytes, start, letters, used, length);
        used += length;
        ends.add(used);
        hashes.add(hash);
        place(size() - 1);
        return size() - 1;
    }

    private void place(int code) {
        if (size() * 3L > slots.length * 2L) {
            slots = new int[slots.length * 2];
            for (int earlier = 1; earlier < code; earlier++) {
                fill(earlier);
            }
        }
        if (code > 0) {
            fill(code);
        }
    }

    private void fill(int code) {
        int slot = hashes.get(code) & (slots.length - 1);
        while (slots[slot] != 0) {
            slot = (slot + 1) & (slots.length - 1);
        }
        slots[slot] = code + 1;
    }

    public String text(int code) {
        int from = code == 0 ? 0 : ends.get(code - 1);
        return new String(letters, from + 1, ends.get(code) - from - 1, StandardCharsets.UTF_8);
    }

    /** Returns whether a text holds a control character other than tab and line ends. */
    public boolean hasControl(int code) {
        for (int i = (code == 0 ? 0 : ends.get(code - 1)) + 1; i < ends.get(code); i++) {
            byte letter = letters[i];
            if (letter == 0x7F || letter >= 0 && letter < ' ' && letter != '\t' && letter != '\n' && letter != '\r') {
                return true;
            }
        }
        return false;
    }
}
