package benchtrue.tables;

import benchtrue.shop.Absent;
import benchtrue.shop.Harmless;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One table as an RFC 4180 file: UTF-8 without a byte-order mark, CRLF, cells in the order they are given. What is not
 * known is an empty cell. Writes about ten million cells a second; not thread-safe.
 */
public final class CsvFile implements Closeable {
    private static final int ROOM = 1 << 16;

    /** No number takes more bytes than this. */
    private static final int WIDEST = 32;

    private static final int LONGEST_PLAIN = 64;

    private static final int DECIMALS = 10_000;
    private static final int RATIO_DECIMALS = 1_000_000;

    /** Beyond this a ratio no longer has six decimals to show. */
    private static final double LARGEST_RATIO = 1e9;

    private static final Pattern NUMBER = Pattern.compile("(-?[0-9]+(\\.[0-9]+)?)?");

    private final OutputStream out;
    private final byte[] buffer = new byte[ROOM];
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
        separate();
        if (isPlain(text)) {
            room(text.length());
            used = Digits.letters(text, buffer, used);
            return this;
        }
        String cell = Harmless.written(text);
        boolean quoted = needsQuotes(cell);
        byte[] bytes = (quoted ? '"' + cell.replace("\"", "\"\"") + '"' : cell).getBytes(StandardCharsets.UTF_8);
        if (bytes.length > ROOM) {
            flush();
            out.write(bytes);
            return this;
        }
        room(bytes.length);
        System.arraycopy(bytes, 0, buffer, used, bytes.length);
        used += bytes.length;
        return this;
    }

    /** Returns whether a text is its own cell, letter by letter, as nearly every key and word is. */
    private static boolean isPlain(String text) {
        if (text.length() > LONGEST_PLAIN) {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean plain = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || i > 0 && c == '-';
            if (!plain) {
                return false;
            }
        }
        return true;
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

    /** A second is 25/9 of a ten-thousandth of an hour, so nothing ever stands half-way. */
    private static long tenThousandths(long seconds) {
        long ninths = Math.multiplyExact(seconds, 25);
        long whole = Math.floorDiv(ninths, 9);
        return 2 * Math.floorMod(ninths, 9L) > 9 ? whole + 1 : whole;
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
        decimal(count, 1);
        return this;
    }

    /** Writes a day as ISO 8601. */
    public CsvFile day(int day) throws IOException {
        separate();
        if (Absent.has(day)) {
            used = Digits.day(LocalDate.ofEpochDay(day), buffer, used);
        }
        return this;
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

    private void rounded(double value, int unit) {
        if (Math.abs(value) < LARGEST_RATIO) {
            decimal((long) Math.rint(value * unit), unit);
        }
    }

    /** Writes an amount of 1/unit; unit is a power of ten and says how many decimals there are. */
    private void decimal(long amount, int unit) {
        if (amount < 0) {
            buffer[used++] = '-';
        }
        used = Digits.whole(Math.abs(amount / unit), buffer, used);
        if (unit > 1) {
            buffer[used++] = '.';
            used = Digits.padded(Math.abs(amount % unit), unit / 10, buffer, used);
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
