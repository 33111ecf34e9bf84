package benchtrue.intake;

import benchtrue.format.FormulaGuard;
import benchtrue.intake.cells.CellFormat;
import benchtrue.intake.cells.ReadCell;
import benchtrue.intake.cells.Reading;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Dictionary;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.Problem;
import benchtrue.shop.Absent;
import benchtrue.shop.Ints;
import benchtrue.shop.Longs;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/**
 * One column of a table: each distinct text is kept and understood once, each row holds its code. Code 0 is the empty text.
 * For loops over millions of rows; elsewhere ask {@link TableRows}.
 */
public final class TextColumn {
    private final Column column;
    private final boolean isText;
    private final Dictionary texts = new Dictionary();
    private final Ints codes = new Ints();
    private final Longs values = new Longs();
    private final List<Problem> problems = new ArrayList<>();
    private final Map<Integer, BigDecimal> roundings = new HashMap<>();

    TextColumn(Column column, int emptyRows) {
        this.column = column;
        isText = column.cell().kind().isText();
        values.add(Absent.AMOUNT);
        problems.add(Problem.NONE);
        for (int row = 0; row < emptyRows; row++) {
            codes.add(0);
        }
    }

    Column column() {
        return column;
    }

    /** Takes an empty cell for the next row and returns whether that can be used. */
    boolean addEmpty() {
        codes.add(0);
        return column.cell().need() != Need.REQUIRED;
    }

    /** Puts a text in place of the newest row's empty cell. */
    void replaceEmpty(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        int code = texts.code(bytes, 0, bytes.length, 0);
        if (code == problems.size()) {
            problems.add(Problem.NONE);
        }
        codes.set(codes.size() - 1, code);
    }

    /** Takes the text of the next row and returns whether it can be used. */
    boolean add(byte[] bytes, int start, int end, CellFormat format, int formatNumber) {
        if (blank(bytes, start, end)) {
            return addEmpty();
        }
        int from = guarded(bytes, start, end) ? start + 1 : start;
        int to = Math.min(end, from + Dictionary.KEPT);
        int code = texts.code(bytes, from, to, isText ? 0 : formatNumber);
        if (code == problems.size()) {
            understand(code, format, end - from > Dictionary.LONGEST);
        }
        codes.add(code);
        return problems.get(code) == Problem.NONE;
    }

    private static boolean blank(byte[] bytes, int start, int end) {
        int at = start;
        while (at < end && (bytes[at] == ' ' || bytes[at] == '\t' || bytes[at] == '\r' || bytes[at] == '\n')) {
            at++;
        }
        return at == end || bytes[at] < 0 && blankLetters(new String(bytes, at, end - at, StandardCharsets.UTF_8));
    }

    /** Returns whether a text is nothing but spaces of whatever width, hard ones and line separators included. */
    private static boolean blankLetters(String text) {
        return text.chars().allMatch(letter -> Character.isWhitespace(letter) || Character.isSpaceChar(letter));
    }

    /**
     * Returns whether a leading apostrophe keeps a spreadsheet from running the text, as {@link FormulaGuard#read} does; it is no
     * part of the text.
     */
    private static boolean guarded(byte[] bytes, int start, int end) {
        if (bytes[start] != '\'') {
            return false;
        }
        String cell = new String(bytes, start, end - start, StandardCharsets.UTF_8);
        return !FormulaGuard.read(cell).equals(cell);
    }

    private void understand(int code, CellFormat format, boolean cut) {
        Reading reading = read(code, format, cut);
        if (!isText) {
            values.add(reading.value());
        }
        problems.add(reading.problem());
        if (reading.rounding().signum() != 0) {
            roundings.put(code, reading.rounding());
        }
    }

    private Reading read(int code, CellFormat format, boolean cut) {
        if (cut) {
            return Reading.bad(Problem.TOO_LONG);
        }
        if (texts.hasControl(code)) {
            return Reading.bad(Problem.CONTROL_CHARACTER);
        }
        return isText ? Reading.NOTHING : ReadCell.read(column.cell(), format.canonical(column, texts.text(code)));
    }

    /** Returns the code of a row's text; 0 for a row of which no file has the column. */
    public int code(int row) {
        return row < codes.size() ? codes.get(row) : 0;
    }

    /** Returns how many distinct texts there are, the empty one included. */
    public int distinct() {
        return texts.size();
    }

    public String text(int code) {
        return texts.text(code);
    }

    /** Returns what a meaning makes of the text of each code. */
    public int[] each(ToIntFunction<String> meaning) {
        int[] found = new int[distinct()];
        Arrays.setAll(found, code -> meaning.applyAsInt(text(code)));
        return found;
    }

    /** Returns the value of a code: seconds, ten-thousandths, days, months, a count, the place of a word; or absent. */
    public long value(int code) {
        return isText ? Absent.AMOUNT : values.get(code);
    }

    /** Returns the value of a row, or {@link Absent#AMOUNT} where it is empty or can't be read. */
    public long valueAt(int row) {
        return value(code(row));
    }

    /** Returns the day, month or year of a row, or {@link Absent#DAY} where it is empty or can't be read. */
    public int dayAt(int row) {
        long value = valueAt(row);
        return Absent.has(value) ? (int) value : Absent.DAY;
    }

    /** Returns whether a code's text is there and can be read. */
    public boolean usable(int code) {
        return code != 0 && problem(code) == Problem.NONE;
    }

    /** Returns what rounding to whole seconds or ten-thousandths added to a code's value. */
    public BigDecimal rounding(int code) {
        return roundings.isEmpty() ? BigDecimal.ZERO : roundings.getOrDefault(code, BigDecimal.ZERO);
    }

    Problem problem(int code) {
        boolean empty = column.cell().need() == Need.REQUIRED || column == LineColumn.LINE;
        return code == 0 && empty ? Problem.EMPTY : problems.get(code);
    }

    /**
     * Returns for every code the least code that says the same: {@code 7.5}, {@code 7.50} and {@code 7,5} are one value,
     * whatever its rounding. A text that can't be read says only what it is, in files of whatever format.
     */
    public int[] sameAs() {
        int[] same = new int[distinct()];
        if (isText) {
            Arrays.setAll(same, code -> code);
            return same;
        }
        Map<Object, Integer> first = new HashMap<>();
        for (int code = 0; code < same.length; code++) {
            same[code] = first.computeIfAbsent(meaning(code), fresh(code));
        }
        return same;
    }

    private Object meaning(int code) {
        if (problem(code) != Problem.NONE || !Absent.has(value(code))) {
            return text(code);
        }
        BigDecimal rounding = rounding(code);
        return rounding.signum() == 0
                ? (Object) value(code)
                : BigDecimal.valueOf(value(code)).subtract(rounding).stripTrailingZeros();
    }

    private static Function<Object, Integer> fresh(int code) {
        return value -> code;
    }
}
