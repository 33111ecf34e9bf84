package benchtrue.intake.columns;

import benchtrue.settings.Pair;
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
    private final Mapping mapping;

    public ColumnNames(Table table, Mapping mapping) {
        this.table = table;
        this.mapping = mapping;
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

    /** Returns how many columns the rule names, or a row needs. */
    public int mapped() {
        return mapping.headers().isEmpty()
                ? (int) table.columns().stream()
                        .filter(column -> column.cell().need() == Need.REQUIRED)
                        .count()
                : mapping.headers().size();
    }

    /** Returns how many columns a header holds. */
    public int count(List<String> names) {
        return columns(names).size() + mapping.shape().wide(names).length;
    }

    /** Returns whether a header holds every column that a row needs and every one that the rule names. */
    public boolean complete(List<String> names) {
        Set<Column> found = columns(names);
        return table.columns().stream()
                .filter(column -> column.cell().need() == Need.REQUIRED
                        || mapping.headers().containsKey(column))
                .allMatch(column -> found.contains(column) || constants.contains(column) || isMade(column, names));
    }

    /** Returns whether a column can be made from those of a header. */
    private boolean isMade(Column column, List<String> names) {
        Pair mapped = mapping.headers().get(column);
        if (mapped == null || !Made.isMade(mapped.text())) {
            return false;
        }
        List<String> plain = names.stream().map(Mapping::plain).toList();
        return Made.isWide(mapped.text())
                ? mapping.shape().wide(names).length > 0
                : Made.sources(mapped.text()).stream().map(Mapping::plain).allMatch(plain::contains);
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
        known.values().stream()
                .filter(column -> mapping.headers().containsKey(column)
                        && !Made.sources(mapping.headers().get(column).text()).isEmpty()
                        && isMade(column, names))
                .forEach(found::add);
        found.remove(null);
        return found;
    }
}
