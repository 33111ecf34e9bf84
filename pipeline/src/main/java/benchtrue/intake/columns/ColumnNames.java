package benchtrue.intake.columns;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The names under which a file's header may hold the columns of its table. */
public final class ColumnNames {
    private final Table table;
    private final Map<String, Column> known = new LinkedHashMap<>();
    private final Set<Column> constants;

    public ColumnNames(Table table, Mapping mapping) {
        this.table = table;
        table.columns().forEach(column -> known.put(Mapping.plain(column.header()), column));
        for (SourceColumn column : SourceColumn.values()) {
            known.put(column.header(), column);
        }
        mapping.headers().forEach((column, pair) -> known.put(Mapping.plain(pair.text()), column));
        constants = mapping.constants().keySet();
    }

    /** Returns the column of a name in a header, or null. */
    public Column column(String name) {
        return known.get(Mapping.plain(name));
    }

    /** Returns how many columns a header holds. */
    public int count(List<String> names) {
        return columns(names).size();
    }

    /** Returns whether a header holds every column that a row needs. */
    public boolean complete(List<String> names) {
        Set<Column> found = columns(names);
        return table.columns().stream()
                .filter(column -> column.cell().need() == Need.REQUIRED)
                .allMatch(column -> found.contains(column) || constants.contains(column));
    }

    /** Returns whether cells have something in every place where a header has a column that a row needs: a row, not a title. */
    public boolean isRow(List<String> cells, List<String> header) {
        int filled = 0;
        for (int cell = 0; cell < header.size(); cell++) {
            Column column = column(header.get(cell));
            if (column != null && column.cell().need() != Need.OPTIONAL) {
                if (cell >= cells.size() || cells.get(cell).isBlank()) {
                    return false;
                }
                filled++;
            }
        }
        return filled > 1;
    }

    private Set<Column> columns(List<String> names) {
        Set<Column> found = new HashSet<>();
        names.forEach(name -> found.add(column(name)));
        found.remove(null);
        return found;
    }
}
