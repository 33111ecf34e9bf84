package benchtrue.intake.dialects;

import benchtrue.intake.cells.NumberText;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Need;
import benchtrue.intake.files.Records;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Tells a totals row at a file's end: it lacks what a row needs, and says so or adds up what stands above it. Mutable. */
final class TotalsRows {
    private static final Set<String> WORDS = Set.of(
            "total",
            "totals",
            "grand total",
            "subtotal",
            "sum",
            "sums",
            "summe",
            "gesamt",
            "gesamtsumme",
            "insgesamt",
            "somme",
            "total general",
            "total g\u00e9n\u00e9ral",
            "totale",
            "totaal",
            "somma",
            "suma",
            "soma",
            "summa",
            "totalt",
            "i alt",
            "yhteens\u00e4",
            "celkem",
            "razem",
            "\u00f6sszesen",
            "\u0438\u0442\u043e\u0433\u043e",
            "\u5408\u8a08",
            "\u5408\u8ba1");

    private static final Pattern NUMBER = Pattern.compile("-?(?:\\d{1,15}(?:\\.\\d{0,15})?|\\.\\d{1,15})");
    private static final BigDecimal UNREADABLE = BigDecimal.valueOf(-1, 30);
    private static final int REMEMBERED = 20_000;

    private final Map<String, BigDecimal> read = new HashMap<>();
    private final List<Column> needed = new ArrayList<>();
    private final List<Column> numbers = new ArrayList<>();
    private final BigDecimal[] sums;
    private final Header header;
    private long rows;
    private int line;
    private String reason = "";

    TotalsRows(Header header) {
        this.header = header;
        for (Column column : header.columns()) {
            boolean isNumber = DialectEvidence.isNumber(column);
            if (isNumber) {
                numbers.add(column);
            }
            if (column.cell().need() != Need.OPTIONAL && !isNumber) {
                needed.add(column);
            }
        }
        sums = new BigDecimal[numbers.size()];
        Arrays.fill(sums, BigDecimal.ZERO);
    }

    /** Returns whether a cell says that its row is a total. */
    static boolean isWord(String cell) {
        String plain = cell.strip().toLowerCase(Locale.ROOT);
        return plain.length() < 20
                && WORDS.contains(
                        plain.endsWith(":")
                                ? plain.substring(0, plain.length() - 1).strip()
                                : plain);
    }

    /** Takes the next row. */
    void take(Records record) {
        reason = reason(record);
        line = record.line();
        rows++;
        for (int i = 0; i < sums.length; i++) {
            add(i, number(record, numbers.get(i)));
        }
    }

    /** Returns the line of the totals row, or -1; ask behind the last row. */
    int line() {
        return reason.isEmpty() ? -1 : line;
    }

    /** Returns the line of the last row, or -1 without rows. */
    int lastLine() {
        return rows == 0 ? -1 : line;
    }

    String reason() {
        return reason;
    }

    private String reason(Records record) {
        int empty = 0;
        for (Column column : needed) {
            empty += isEmpty(record, column) ? 1 : 0;
        }
        if (empty == 0 && !isEmptyNumber(record)) {
            return "";
        }
        for (int cell = 0; cell < record.size(); cell++) {
            if (isWord(DialectEvidence.text(record, cell))) {
                return "it says so";
            }
        }
        return empty == needed.size() && rows > 1 && addsUp(record) ? "it adds up the rows above" : "";
    }

    private boolean isEmptyNumber(Records record) {
        for (Column column : numbers) {
            if (column.cell().need() != Need.OPTIONAL && isEmpty(record, column)) {
                return true;
            }
        }
        return false;
    }

    private boolean isEmpty(Records record, Column column) {
        int cell = header.cell(column);
        if (cell >= record.size()) {
            return true;
        }
        for (int at = record.start(cell); at < record.end(cell); at++) {
            if (record.bytes()[at] > ' ' || record.bytes()[at] < 0) {
                return false;
            }
        }
        return true;
    }

    private boolean addsUp(Records record) {
        int found = 0;
        for (int i = 0; i < sums.length; i++) {
            BigDecimal total = number(record, numbers.get(i));
            if (total != null && total.signum() != 0) {
                if (sums[i] == null || total.compareTo(sums[i]) != 0) {
                    return false;
                }
                found++;
            }
        }
        return found > 0;
    }

    private void add(int place, BigDecimal number) {
        if (number != null && sums[place] != null) {
            sums[place] = number == UNREADABLE ? null : sums[place].add(number);
        }
    }

    /** Returns a number read by what it tells itself, null for an empty cell. */
    private BigDecimal number(Records record, Column column) {
        if (isEmpty(record, column)) {
            return null;
        }
        String text = DialectEvidence.text(record, header.cell(column));
        BigDecimal known = read.get(text);
        if (known == null) {
            known = number(text.strip());
            if (read.size() < REMEMBERED) {
                read.put(text, known);
            }
        }
        return known;
    }

    private static BigDecimal number(String text) {
        String plain = NumberText.canonical(text, DialectEvidence::asItTells);
        return NUMBER.matcher(plain).matches() ? new BigDecimal(plain) : UNREADABLE;
    }
}
