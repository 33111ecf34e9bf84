package benchtrue.intake.files;

/** Counts the letters beyond ASCII that are whole and broken in UTF-8 (RFC 3629). Mutable. */
public final class Utf8Letters {
    /** Bytes that stand for no letter in windows-1252. */
    private static final String NOT_WINDOWS = "\u0081\u008d\u008f\u0090\u009d";

    private long whole;
    private long broken;
    private long impossible;
    private int open;

    public void take(byte[] bytes, int length) {
        for (int i = 0; i < length; i++) {
            if (bytes[i] >= 0 && open == 0) {
                continue;
            }
            next(bytes[i] & 0xFF);
        }
    }

    private void next(int letter) {
        impossible += NOT_WINDOWS.indexOf(letter) >= 0 ? 1 : 0;
        if (open > 0) {
            if ((letter & 0xC0) == 0x80) {
                open--;
                whole += open == 0 ? 1 : 0;
                return;
            }
            broken++;
            open = 0;
        }
        if (letter < 0x80) {
            return;
        }
        open = letter >= 0xC2 && letter < 0xE0
                ? 1
                : letter >= 0xE0 && letter < 0xF0 ? 2 : letter >= 0xF0 && letter < 0xF5 ? 3 : 0;
        broken += open == 0 ? 1 : 0;
    }

    /** Counts a letter that the end cut off. */
    void end() {
        broken += open > 0 ? 1 : 0;
        open = 0;
    }

    long whole() {
        return whole;
    }

    public long broken() {
        return broken;
    }

    /** Returns how many bytes can't be windows-1252. */
    long impossible() {
        return impossible;
    }
}
