package benchtrue.tables;

import benchtrue.shop.Absent;
import benchtrue.shop.Harmless;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One table as an RFC 4180 file: UTF-8 without a byte-order mark, CRLF, cells in the order they are given. What is not
 * known is an empty cell. Writes some thirty million cells a second; not thread-safe.
 */
public final class CsvFile implements Closeable {
    private static final int ROOM = 1 << 16;

    /** No number takes more bytes than this. */
    private static final int WIDEST = 32;

    private static final int LONGEST_PLAIN = 64;
    private static final byte[] UNKNOWN = {};

    private static final int DECIMALS = 4;
    private static final int RATIO_DECIMALS = 6;
    private static final int[] POWERS_OF_TEN = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};

    /** Beyond this a ratio no longer has six decimals to show. */
    private static final double LARGEST_RATIO = 1e9;

    private static final Pattern NUMBER = Pattern.compile("(-?[0-9]+(\\.[0-9]+)?)?");

    private final OutputStream out;
    private final byte[] buffer = new byte[ROOM];
    private final DayCells days = new DayCells();
    private int used;
    private boolean rowBegun;

    private CsvFile(OutputStream out) {
        this.out = out;
    }

    /** Creates a file and writes its header. */
    public static CsvFile create(Path file, List<String> header) throws IOException {
        CsvFile csv = new CsvFile(Files.newOutputStream(file));
        for (String name : header) {
            csv.text(name);
        }
        csv.endRow();
        return csv;
    }

    /** Writes text, made harmless where a spreadsheet would run it. */
    public CsvFile text(String text) throws IOException {
        if (text.length() <= LONGEST_PLAIN) {
            room(1 + LONGEST_PLAIN);
            int end = plain(text);
            if (end >= 0) {
                separate();
                used = end;
                return this;
            }
        }
        return cell(cell(text));
    }

    /**
     * Puts a text behind what is in the buffer where it is its own cell, letter by letter, as nearly every key and word is;
     * returns the place behind it, else -1.
     */
    private int plain(String text) {
        int at = rowBegun ? used + 1 : used;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean plain = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || i > 0 && c == '-';
            if (!plain) {
                return -1;
            }
            buffer[at++] = (byte) c;
        }
        return at;
    }

    /** Returns a text as the bytes of its cell, for one that comes again and again. */
    static byte[] cell(String text) {
        String cell = Harmless.written(text);
        return (needsQuotes(cell) ? '"' + cell.replace("\"", "\"\"") + '"' : cell).getBytes(StandardCharsets.UTF_8);
    }

    /** Writes a text of which the bytes are known. */
    CsvFile cell(byte[] cell) throws IOException {
        separate();
        if (cell.length > ROOM) {
            flush();
            out.write(cell);
            return this;
        }
        room(cell.length);
        System.arraycopy(cell, 0, buffer, used, cell.length);
        used += cell.length;
        return this;
    }

    private static boolean needsQuotes(String cell) {
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c == ',' || c == '"' || c == '\n' || c == '\r') {
                return true;
            }
        }
        return false;
    }

    /** Writes seconds as decimal hours with four decimals. */
    public CsvFile hours(long seconds) throws IOException {
        separate();
        if (Absent.has(seconds)) {
            decimal(tenThousandths(seconds), DECIMALS);
        }
        return this;
    }

    /** A second is 25/9 of a ten-thousandth of an hour, so nothing ever stands half-way; 9/18 more rounds. */
    private static long tenThousandths(long seconds) {
        return Math.floorDiv(Math.addExact(Math.multiplyExact(seconds, 50), 9), 18);
    }

    /** Writes hours that are a ratio or a sum of ratios, with four decimals. */
    public CsvFile hours(double hours) throws IOException {
        separate();
        rounded(hours, DECIMALS);
        return this;
    }

    /** Writes ten-thousandths as an amount with four decimals. */
    public CsvFile money(long tenThousandths) throws IOException {
        separate();
        if (Absent.has(tenThousandths)) {
            decimal(tenThousandths, DECIMALS);
        }
        return this;
    }

    /** Writes a ratio, chance or share with six decimals. */
    public CsvFile ratio(double ratio) throws IOException {
        separate();
        rounded(ratio, RATIO_DECIMALS);
        return this;
    }

    /** Writes a number that is text already, or nothing; a minus does not make it something a spreadsheet would run. */
    public CsvFile decimal(String number) throws IOException {
        if (!NUMBER.matcher(number).matches()) {
            throw new IllegalArgumentException("not a decimal number: " + number);
        }
        separate();
        used = Digits.letters(number, buffer, used);
        return this;
    }

    /** Writes a count. */
    public CsvFile count(long count) throws IOException {
        separate();
        decimal(count, 0);
        return this;
    }

    /** Writes a day as ISO 8601. */
    public CsvFile day(int day) throws IOException {
        return cell(Absent.has(day) ? days.of(day) : UNKNOWN);
    }

    /** Ends the row. */
    public void endRow() throws IOException {
        room(2);
        buffer[used++] = '\r';
        buffer[used++] = '\n';
        rowBegun = false;
    }

    private void separate() throws IOException {
        room(WIDEST);
        if (rowBegun) {
            buffer[used++] = ',';
        }
        rowBegun = true;
    }

    private void rounded(double value, int decimals) {
        if (Math.abs(value) < LARGEST_RATIO) {
            decimal((long) Math.rint(value * POWERS_OF_TEN[decimals]), decimals);
        }
    }

    /** Writes an amount whose last so many digits are decimals. */
    private void decimal(long amount, int decimals) {
        if (amount < 0) {
            buffer[used++] = '-';
        }
        int unit = POWERS_OF_TEN[decimals];
        long whole = Math.abs(amount / unit);
        used = Digits.whole(whole, buffer, used);
        if (decimals > 0) {
            buffer[used++] = '.';
            used = Digits.padded((int) Math.abs(amount % unit), decimals, buffer, used);
        }
    }

    private void room(int bytes) throws IOException {
        if (used + bytes > ROOM) {
            flush();
        }
    }

    private void flush() throws IOException {
        out.write(buffer, 0, used);
        used = 0;
    }

    @Override
    public void close() throws IOException {
        try (out) {
            flush();
        }
    }
}
