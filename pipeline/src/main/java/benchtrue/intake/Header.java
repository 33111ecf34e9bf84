package benchtrue.intake;

import benchtrue.shop.ExitCode;
import benchtrue.shop.NearestName;
import benchtrue.shop.Refusal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Which cell of a file's records holds which canonical column. Cells of other columns are never looked at. */
final class Header {
    static final int NO_CELL = -1;

    private final Map<Column, Integer> cells;
    private final List<String> strangers;
    private final int size;

    private Header(Map<Column, Integer> cells, List<String> strangers, int size) {
        this.cells = cells;
        this.strangers = List.copyOf(strangers);
        this.size = size;
    }

    /**
     * Reads the record of column names.
     *
     * @throws Refusal where a needed column is missing or a column stands there twice
     */
    static Header read(Records record, Table table, String file) {
        Map<String, Column> known = known(table);
        Map<Column, Integer> cells = new LinkedHashMap<>();
        List<String> strangers = new ArrayList<>();
        for (int cell = 0; cell < record.size(); cell++) {
            String name = name(record, cell);
            Column column = known.get(name.toLowerCase(Locale.ROOT));
            if (column == null) {
                strangers.add(name);
            } else if (cells.put(column, cell) != null) {
                throw new Refusal(
                        ExitCode.UNUSABLE_FILE,
                        file + ", line " + record.line() + ", column " + column.header()
                                + ": found twice in the header, expected once. Take one out or rename it.");
            }
        }
        Header header = new Header(cells, strangers, record.size());
        header.requireNeeded(table, file, record.line());
        return header;
    }

    private static Map<String, Column> known(Table table) {
        Map<String, Column> known = new LinkedHashMap<>();
        table.columns().forEach(column -> known.put(column.header(), column));
        for (SourceColumn column : SourceColumn.values()) {
            known.put(column.header(), column);
        }
        return known;
    }

    private static String name(Records record, int cell) {
        int start = record.start(cell);
        int length = Math.min(record.end(cell) - start, Dictionary.LONGEST);
        return new String(record.bytes(), start, length, StandardCharsets.UTF_8).strip();
    }

    private void requireNeeded(Table table, String file, int line) {
        List<String> missing = new ArrayList<>();
        for (Column column : table.columns()) {
            if (column.cell().need() == Need.REQUIRED && !cells.containsKey(column)) {
                missing.add(column.header()
                        + NearestName.to(column.header(), strangers)
                                .map(near -> " (the nearest there is \"" + Problem.shown(near) + "\")")
                                .orElse(""));
            }
        }
        if (!missing.isEmpty()) {
            throw new Refusal(
                    ExitCode.UNUSABLE_FILE,
                    file + ", line " + line + ": found a header with " + cells.size() + " of the " + table.title()
                            + " columns, expected also " + String.join(", ", missing)
                            + ". Rename the columns, or map them in shop.toml (benchtrue map drafts it).");
        }
    }

    List<Column> columns() {
        return List.copyOf(cells.keySet());
    }

    int cell(Column column) {
        return cells.getOrDefault(column, NO_CELL);
    }

    int size() {
        return size;
    }

    /** Returns whether the file says where its rows came from. */
    boolean isSetAside() {
        return cells.containsKey(SourceColumn.SOURCE_FILE)
                && cells.containsKey(SourceColumn.SOURCE_LINE)
                && cells.containsKey(SourceColumn.SOURCE_DIGEST);
    }

    /** Returns the nearest canonical column of each column that looks like one misspelt. */
    Map<String, String> misspelt(Table table) {
        List<String> open = new ArrayList<>();
        for (Column column : table.columns()) {
            if (!cells.containsKey(column)) {
                open.add(column.header());
            }
        }
        Map<String, String> misspelt = new LinkedHashMap<>();
        for (String stranger : strangers) {
            Optional<String> near = NearestName.to(stranger, open);
            near.ifPresent(name -> misspelt.put(stranger, name));
        }
        return misspelt;
    }
}
