package benchtrue.command;

import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Table;
import benchtrue.reconcile.SetAside;
import benchtrue.reconcile.SetAsideRow;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is wrong with the rows that are set aside, the same faults together, those of most rows first. */
final class Faults {
    private static final Pattern REASON = Pattern.compile("(?s)([a-z_]+): (.*?),? expected (.*?)( \\(the nearest .*)?");
    private final Map<Kind, Fault> faults = new LinkedHashMap<>();
    private long rows;

    /** Faults that are mended in one way. */
    private record Kind(Table table, String column, String expected) {}

    /**
     * A fault of some rows.
     *
     * @param examples where it was met and what was found there, in the files' order
     */
    record Fault(Table table, String column, String expected, List<String> examples) {
        /** Returns what to do about it. */
        String remedy() {
            Optional<Column> found = table.columns().stream()
                    .filter(known -> known.header().equals(column))
                    .findFirst();
            return found.map(Fault::remedy)
                    .orElse(
                            "Look on these lines for a delimiter too many or too few, or text with one that stands in no"
                                    + " quotes.");
        }

        private static String remedy(Column column) {
            return switch (column.cell().kind()) {
                case DAY, MONTH ->
                    "Correct the date; if the whole file writes dates otherwise, say how in shop.toml:"
                            + " dates = ...";
                case HOURS, SIGNED_HOURS, MONEY, SIGNED_MONEY, QUANTITY, COUNT, YEAR, CLOCK ->
                    "Correct the figure; if"
                            + " the whole file writes numbers otherwise, say how in shop.toml: decimal = ...";
                case WORD ->
                    "Correct the word, or say in shop.toml what it means: [files.values." + column.header() + "].";
                case TEXT, KEYS, WORDS, PASSED ->
                    "Fill it in or correct it; where it names a row of another table, export"
                            + " that table up to the same day.";
            };
        }
    }

    private Faults() {}

    static Faults of(SetAside rows) {
        Faults faults = new Faults();
        for (Table table : rows.tables()) {
            faults.rows += rows.count(table);
            rows.forEach(table, row -> row.reasons().forEach(reason -> faults.add(table, row, reason)));
        }
        return faults;
    }

    private void add(Table table, SetAsideRow row, String reason) {
        Matcher parts = REASON.matcher(reason);
        String place = row.file() + " line " + row.line() + ": ";
        if (parts.matches()) {
            String nearest = parts.group(4) == null ? "" : parts.group(4);
            boolean isForm = parts.group(1).equals("row");
            add(
                    new Kind(table, parts.group(1), isForm ? "as many cells as in the header" : parts.group(3)),
                    place + parts.group(2) + nearest);
        } else {
            add(new Kind(table, "row", reason), place + reason);
        }
    }

    private void add(Kind kind, String example) {
        faults.computeIfAbsent(kind, fresh -> new Fault(fresh.table, fresh.column, fresh.expected, new ArrayList<>()))
                .examples()
                .add(example);
    }

    /** Returns how many rows are set aside. */
    long rows() {
        return rows;
    }

    /** Returns the faults, those of most rows first. */
    List<Fault> worstFirst() {
        List<Fault> all = new ArrayList<>(faults.values());
        all.sort(Comparator.comparingInt((Fault fault) -> fault.examples().size())
                .reversed());
        return all;
    }
}
