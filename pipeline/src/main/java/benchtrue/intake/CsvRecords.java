package benchtrue.intake;

import benchtrue.settings.FileRule;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Reads RFC 4180 text in UTF-8 without making an object a cell. Strict where leniency loses rows: a quote that never
 * closes, text after a closing quote, bytes that are no UTF-8 and endless records are refused with their line.
 */
final class CsvRecords implements Records {
    /** Longest record in bytes. */
    static final int LONGEST_RECORD = 1 << 20;

    /** Most cells of a record. */
    static final int MOST_CELLS = 1_000;

    /** Bytes that tell the kind of a file. */
    private static final int MAGIC = 8;

    private static final byte NEVER_IN_UTF8 = (byte) 0xFF;

    private final InputStream in;
    private final String file;
    private final byte delimiter;
    private final byte quote;
    private byte[] buffer = new byte[1 << 16];
    private int filled;
    private int next;
    private boolean ended;
    private int[] starts = new int[32];
    private int[] ends = new int[32];
    private int cells;
    private int line;
    private int nextLine = 1;
    private boolean ascii;
    private boolean quoted;

    CsvRecords(InputStream in, String file, char delimiter) throws IOException {
        this(in, file, delimiter, '"', 1);
    }

    /**
     * Takes text at a line's beginning.
     *
     * @param quote around text, or {@link FileRule#NO_QUOTE}
     * @param firstLine the line, from 1
     */
    CsvRecords(InputStream in, String file, char delimiter, char quote, int firstLine) throws IOException {
        this.in = in;
        this.file = file;
        this.delimiter = (byte) delimiter;
        this.quote = quote == FileRule.NO_QUOTE ? NEVER_IN_UTF8 : (byte) quote;
        nextLine = firstLine;
        while (filled < MAGIC && fill()) {
            // a stream may hand over less than asked for
        }
        if (filled >= 3 && buffer[0] == (byte) 0xEF && buffer[1] == (byte) 0xBB && buffer[2] == (byte) 0xBF) {
            next = 3;
        }
        KnownKinds.requireTable(buffer, next, filled, file);
    }

    @Override
    public boolean next() throws IOException {
        while (true) {
            line = nextLine;
            int end = scan();
            if (end < 0) {
                return false;
            }
            if (!ascii) {
                requireUtf8(next, end);
            }
            next = end;
            if (quoted) {
                unescape();
            }
            if (holdsAnything()) {
                return true;
            }
        }
    }

    /** Finds the cells of the record at {@code next}; returns where the following one begins, or -1 at the end. */
    private int scan() throws IOException {
        while (true) {
            nextLine = line;
            int end = tryScan();
            if (end != NEEDS_MORE) {
                return end;
            }
            if (!fill()) {
                ended = true;
            }
        }
    }

    private static final int NEEDS_MORE = -2;

    private int tryScan() {
        cells = 0;
        ascii = true;
        quoted = false;
        int at = next;
        if (at == filled) {
            return ended ? -1 : NEEDS_MORE;
        }
        while (true) {
            begin(at);
            at = at < filled && buffer[at] == quote ? quotedCell(at + 1) : plainCell(at);
            if (at == NEEDS_MORE) {
                return NEEDS_MORE;
            }
            if (at == filled) {
                return at;
            }
            if (buffer[at] != delimiter) {
                return afterLineEnd(at);
            }
            at++;
            if (at == filled && !ended) {
                return NEEDS_MORE;
            }
        }
    }

    private void begin(int at) {
        if (cells == starts.length) {
            if (cells >= MOST_CELLS) {
                throw refused(
                        "the row has more than " + MOST_CELLS + " cells", "a table with a header of known columns");
            }
            starts = Arrays.copyOf(starts, Math.min(MOST_CELLS, 2 * cells));
            ends = Arrays.copyOf(ends, starts.length);
        }
        starts[cells] = at;
    }

    private int plainCell(int from) {
        byte[] bytes = buffer;
        int at = from;
        int signs = 0;
        for (; at < filled; at++) {
            byte letter = bytes[at];
            if (letter == delimiter || letter == '\n' || letter == '\r') {
                break;
            }
            signs |= letter;
        }
        if (at == filled && !ended) {
            return NEEDS_MORE;
        }
        ascii &= signs >= 0;
        ends[cells++] = at;
        return at;
    }

    private int quotedCell(int from) {
        quoted = true;
        for (int at = from; at < filled; at++) {
            byte letter = buffer[at];
            if (letter == quote) {
                if (at + 1 == filled && !ended) {
                    return NEEDS_MORE;
                }
                if (at + 1 == filled || buffer[at + 1] != quote) {
                    return closed(at);
                }
                at++;
            } else if (letter == '\n' || letter == '\r' && !(at + 1 < filled && buffer[at + 1] == '\n')) {
                nextLine++;
            } else {
                ascii &= letter >= 0;
            }
        }
        if (ended) {
            throw refused(
                    "a quoted text opens in this row and never closes", "a closing \" (a \" inside a text is doubled)");
        }
        return NEEDS_MORE;
    }

    private int closed(int quote) {
        ends[cells++] = quote + 1;
        int at = quote + 1;
        if (at < filled && buffer[at] != delimiter && buffer[at] != '\n' && buffer[at] != '\r') {
            throw refused(
                    "text goes on after a closing quote",
                    "a delimiter or the end of the row (a \" inside a text is doubled)");
        }
        return at;
    }

    private int afterLineEnd(int at) {
        if (buffer[at] == '\r' && at + 1 == filled && !ended) {
            return NEEDS_MORE;
        }
        nextLine++;
        return buffer[at] == '\r' && at + 1 < filled && buffer[at + 1] == '\n' ? at + 2 : at + 1;
    }

    /** Reads on behind what is there, keeping the record at {@code next}; returns false at the end of the file. */
    private boolean fill() throws IOException {
        if (next > 0) {
            System.arraycopy(buffer, next, buffer, 0, filled - next);
            filled -= next;
            next = 0;
        }
        if (filled == buffer.length) {
            if (filled >= LONGEST_RECORD) {
                throw refused(
                        "the row is longer than " + LONGEST_RECORD + " bytes",
                        "rows that end; look for a quote that never closes, or export the file again");
            }
            buffer = Arrays.copyOf(buffer, 2 * filled);
        }
        int read = in.read(buffer, filled, buffer.length - filled);
        filled += Math.max(read, 0);
        return read >= 0;
    }

    /** Takes the quotes off, in place. */
    private void unescape() {
        for (int cell = 0; cell < cells; cell++) {
            int from = starts[cell];
            if (from < ends[cell] && buffer[from] == quote) {
                int to = from;
                for (int at = from + 1; at < ends[cell] - 1; at++) {
                    buffer[to++] = buffer[at];
                    at += buffer[at] == quote ? 1 : 0;
                }
                ends[cell] = to;
            }
        }
    }

    private boolean holdsAnything() {
        for (int cell = 0; cell < cells; cell++) {
            if (starts[cell] < ends[cell]) {
                return true;
            }
        }
        return false;
    }

    private void requireUtf8(int from, int to) {
        try {
            StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(buffer, from, to - from));
        } catch (CharacterCodingException notUtf8) {
            throw refused(
                    "letters that are not UTF-8",
                    "UTF-8; save the file with that encoding, or name its own in shop.toml");
        }
    }

    private Refusal refused(String found, String expected) {
        return new Refusal(
                ExitCode.UNUSABLE_FILE, file + ", line " + line + ": found " + found + ", expected " + expected + ".");
    }

    @Override
    public int line() {
        return line;
    }

    @Override
    public int size() {
        return cells;
    }

    @Override
    public byte[] bytes() {
        return buffer;
    }

    @Override
    public int start(int cell) {
        return starts[cell];
    }

    @Override
    public int end(int cell) {
        return ends[cell];
    }
}
