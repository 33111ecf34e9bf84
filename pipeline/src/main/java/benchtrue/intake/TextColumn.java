package benchtrue.intake;

import benchtrue.shop.Absent;
import benchtrue.shop.Bytes;
import benchtrue.shop.Ints;
import benchtrue.shop.Longs;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** One column of a table while and after it is read: each distinct text is kept and understood once. */
final class TextColumn {
    private static final Problem[] PROBLEMS = Problem.values();
    private final Column column;
    private final Dictionary texts = new Dictionary();
    private final Ints codes = new Ints();
    private final Longs values = new Longs();
    private final Bytes problems = new Bytes();
    private final Map<Integer, BigDecimal> roundings = new HashMap<>();

    TextColumn(Column column, int emptyRows) {
        this.column = column;
        values.add(Absent.AMOUNT);
        problems.add((byte) Problem.NONE.ordinal());
        for (int row = 0; row < emptyRows; row++) {
            codes.add(0);
        }
    }

    /** Takes an empty cell for the next row and returns whether that can be used. */
    boolean addEmpty() {
        codes.add(0);
        return column.cell().need() == Need.OPTIONAL;
    }

    /** Takes the text of the next row and returns whether it can be used. */
    boolean add(byte[] bytes, int start, int end, CellFormat format, int formatNumber) {
        if (blank(bytes, start, end)) {
            return addEmpty();
        }
        int from = guarded(bytes, start, end) ? start + 1 : start;
        int to = Math.min(end, from + Dictionary.LONGEST);
        int code = texts.code(bytes, from, to, column.cell().kind().isText() ? 0 : formatNumber);
        if (code == problems.size()) {
            understand(code, format, to < end);
        }
        codes.add(code);
        return problems.get(code) == 0;
    }

    private static boolean blank(byte[] bytes, int start, int end) {
        int at = start;
        while (at < end && (bytes[at] == ' ' || bytes[at] == '\t')) {
            at++;
        }
        return at == end;
    }

    /** Returns whether a leading apostrophe keeps a spreadsheet from running the text; it is no part of the text. */
    private static boolean guarded(byte[] bytes, int start, int end) {
        return end - start > 1 && bytes[start] == '\'' && "=+-@\t\r".indexOf(bytes[start + 1]) >= 0;
    }

    private void understand(int code, CellFormat format, boolean cut) {
        Reading reading = read(code, format, cut);
        if (!column.cell().kind().isText()) {
            values.add(reading.value());
        }
        problems.add((byte) reading.problem().ordinal());
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
        return column.cell().kind().isText()
                ? Reading.NOTHING
                : ReadCell.read(column.cell(), format.canonical(column, texts.text(code)));
    }

    Column column() {
        return column;
    }

    int code(int row) {
        return codes.get(row);
    }

    int distinct() {
        return texts.size();
    }

    String text(int code) {
        return texts.text(code);
    }

    long value(int code) {
        return column.cell().kind().isText() ? Absent.AMOUNT : values.get(code);
    }

    Problem problem(int code) {
        return code == 0 && column.cell().need() == Need.REQUIRED ? Problem.EMPTY : PROBLEMS[problems.get(code)];
    }

    BigDecimal rounding(int code) {
        return roundings.getOrDefault(code, BigDecimal.ZERO);
    }

    /**
     * Returns for every code the least code that says the same: {@code 7.5} and {@code 7.50} are one value. A text that
     * can't be read says only what it is.
     */
    int[] sameAs() {
        int[] same = new int[distinct()];
        Map<Long, Integer> first = new HashMap<>();
        for (int code = 0; code < same.length; code++) {
            same[code] = isExact(code) ? first.computeIfAbsent(value(code), fresh(code)) : code;
        }
        return same;
    }

    private boolean isExact(int code) {
        return problem(code) == Problem.NONE
                && Absent.has(value(code))
                && rounding(code).signum() == 0;
    }

    private static Function<Long, Integer> fresh(int code) {
        return value -> code;
    }
}
