package benchtrue.command;

import benchtrue.format.TomlText;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.reconcile.SetAside;
import benchtrue.reconcile.SetAsideRow;
import benchtrue.settings.ValueMap;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is wrong with the rows that are set aside, the same faults together, those of most rows first. */
final class Faults {
    private static final Pattern REASON = Pattern.compile("(?s)([a-z_]+): (.*?),? expected (.*?)( \\(the nearest .*)?");
    private static final Pattern FOUND = Pattern.compile("(?s)[^\"]*\"(.*)\"[^\"]*");
    private final Map<Sort, Fault> faults = new LinkedHashMap<>();
    private long rows;

    /** Faults that are mended in one way. */
    private record Sort(Table table, String column, String expected) {}

    /**
     * A fault of some rows.
     *
     * @param examples where it was met and what was found there, in the files' order
     * @param words the texts that were found, each with the name nearest to it, empty where none is near
     */
    record Fault(Table table, String column, String expected, List<String> examples, SortedMap<String, String> words) {
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
                case WORD -> "Correct the word, or say in shop.toml what it means:";
                case TEXT, KEYS, WORDS, PASSED ->
                    isRepair(column)
                            ? "Correct the name, put the repair into the price book, or say in shop.toml what it means:"
                            : "Fill it in or correct it; where it names a row of another table, export"
                                    + " that table up to the same day.";
            };
        }

        private static boolean isRepair(Column column) {
            return column == LineColumn.REPAIR_TYPE || column == TimeColumn.REPAIR_TYPE;
        }

        /**
         * Returns the lines of {@code shop.toml} that say what unknown words mean; none where words can't mend it.
         *
         * @param known sections of words that stand there already
         */
        List<String> toPaste(List<ValueMap> known) {
            Optional<Column> found = table.columns().stream()
                    .filter(one -> one.header().equals(column))
                    .filter(one -> one.cell().kind() == Kind.WORD || isRepair(one))
                    .findFirst();
            if (found.isEmpty() || words.isEmpty()) {
                return List.of();
            }
            List<String> lines = new ArrayList<>();
            lines.add(known.stream()
                    .filter(map -> map.column().equals(column))
                    .findFirst()
                    .map(map -> "# below [words." + column + "] on line " + map.line())
                    .orElse("[words." + column + "]"));
            String choice = isRepair(found.get())
                    ? "a repair type of the price book, or one-off"
                    : String.join(", ", found.get().cell().words());
            words.forEach((word, near) -> lines.add(TomlText.quoted(word) + " = " + TomlText.quoted(near) + "  # "
                    + (near.isEmpty() ? "" : "the nearest; else ") + choice));
            return lines;
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
            Fault fault = fault(
                    new Sort(table, parts.group(1), isForm ? "as many cells as in the header" : parts.group(3)),
                    place + parts.group(2) + nearest);
            Matcher word = FOUND.matcher(parts.group(2));
            if (word.matches()) {
                Matcher near = FOUND.matcher(nearest);
                fault.words().put(word.group(1), near.matches() ? near.group(1) : "");
            }
        } else {
            fault(new Sort(table, "row", reason), place + reason);
        }
    }

    private Fault fault(Sort sort, String example) {
        Fault fault = faults.computeIfAbsent(
                sort,
                fresh -> new Fault(fresh.table, fresh.column, fresh.expected, new ArrayList<>(), new TreeMap<>()));
        fault.examples().add(example);
        return fault;
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
