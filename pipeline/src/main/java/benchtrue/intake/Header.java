package benchtrue.intake;

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

    Header(Map<Column, Integer> cells, List<String> strangers, int size) {
        this.cells = cells;
        this.strangers = List.copyOf(strangers);
        this.size = size;
    }

    /**
     * Reads the record of column names.
     *
     * @param mapping which of the file's headers are which columns; none applies to a file of rows that come back
     * @throws Refusal where a needed or mapped column is missing or a column stands there twice
     */
    static Header read(Records record, Table table, Mapping mapping, String file) {
        List<String> names = new ArrayList<>();
        for (int cell = 0; cell < record.size(); cell++) {
            names.add(name(record, cell));
        }
        return new ReadHeader(table, isSetAside(names) ? Mapping.NONE : mapping, file, record.line()).read(names);
    }

    private static boolean isSetAside(List<String> names) {
        return names.stream()
                .map(name -> name.toLowerCase(Locale.ROOT))
                .toList()
                .containsAll(List.of(
                        SourceColumn.SOURCE_FILE.header(),
                        SourceColumn.SOURCE_LINE.header(),
                        SourceColumn.SOURCE_DIGEST.header()));
    }

    private static String name(Records record, int cell) {
        int start = record.start(cell);
        int length = Math.min(record.end(cell) - start, Dictionary.LONGEST);
        return new String(record.bytes(), start, length, StandardCharsets.UTF_8).strip();
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
