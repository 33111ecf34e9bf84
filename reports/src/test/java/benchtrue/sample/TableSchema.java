package benchtrue.sample;

import benchtrue.intake.columns.Cell;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.LineColumn;
import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.PartColumn;
import benchtrue.intake.columns.Table;
import benchtrue.intake.columns.TicketColumn;
import benchtrue.intake.columns.WaitColumn;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Table Schema (Frictionless Data, version 1) of a canonical table. */
final class TableSchema {
    private static final String NUMBER = "[+-]?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)";
    private static final String SPAN = "[0-9]+:[0-5][0-9](:[0-5][0-9])?";

    /** Columns that hold another table's key, wherever they are filled. */
    private static final Map<Table, List<Reference>> REFERENCES = Map.of(
            Table.QUOTED_LINES,
            List.of(
                    new Reference(List.of(LineColumn.TICKET), Table.TICKETS),
                    new Reference(List.of(LineColumn.REWORK_OF), Table.TICKETS)),
            Table.TICKETS,
            List.of(new Reference(List.of(TicketColumn.REWORK_OF), Table.TICKETS)),
            Table.PARTS_USAGE,
            List.of(
                    new Reference(List.of(PartColumn.TICKET), Table.TICKETS),
                    new Reference(List.of(PartColumn.TICKET, PartColumn.LINE), Table.QUOTED_LINES)),
            Table.WAITS,
            List.of(new Reference(List.of(WaitColumn.TICKET), Table.TICKETS)));

    /** Columns whose texts together are a key of a table. */
    private record Reference(List<Column> columns, Table table) {}

    private TableSchema() {}

    /**
     * Returns the schema of a file.
     *
     * @param header names of its columns in its order; others than the table's are left out
     */
    static Map<String, Object> of(Table table, List<String> header) {
        List<Column> columns = new ArrayList<>();
        for (String name : header) {
            table.columns().stream()
                    .filter(column -> column.header().equals(name))
                    .forEach(columns::add);
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("fields", columns.stream().map(TableSchema::field).toList());
        schema.put("missingValues", List.of("", "n/a"));
        if (table.key().stream().allMatch(column -> column.cell().need() != Need.OPTIONAL)) {
            schema.put("primaryKey", names(table.key()));
        }
        List<Map<String, Object>> keys = REFERENCES.getOrDefault(table, List.of()).stream()
                .filter(reference -> columns.containsAll(reference.columns))
                .map(reference -> foreignKey(table, reference))
                .toList();
        if (!keys.isEmpty()) {
            schema.put("foreignKeys", keys);
        }
        return schema;
    }

    private static List<String> names(List<Column> columns) {
        return columns.stream().map(Column::header).toList();
    }

    /** A table that looks back at itself is named by an empty text. */
    private static Map<String, Object> foreignKey(Table from, Reference reference) {
        Map<String, Object> target = new LinkedHashMap<>();
        target.put("resource", reference.table == from ? "" : reference.table.title());
        target.put("fields", names(reference.table.key()));
        Map<String, Object> key = new LinkedHashMap<>();
        key.put("fields", names(reference.columns));
        key.put("reference", target);
        return key;
    }

    private static Map<String, Object> field(Column column) {
        Cell cell = column.cell();
        Map<String, Object> field = new LinkedHashMap<>();
        field.put("name", column.header());
        field.put("type", type(cell));
        field.put("description", cell.meaning() + unit(cell));
        Map<String, Object> constraints = constraints(cell);
        if (!constraints.isEmpty()) {
            field.put("constraints", constraints);
        }
        return field;
    }

    private static String unit(Cell cell) {
        return switch (cell.kind()) {
            case HOURS, SIGNED_HOURS -> "; hours in decimals or h:mm";
            case MONEY, SIGNED_MONEY -> "; in the shop's currency";
            case KEYS, WORDS -> "; several separated by ;";
            case CLOCK -> "; h:mm on a clock of 24 hours";
            default -> "";
        };
    }

    private static String type(Cell cell) {
        return switch (cell.kind()) {
            case DAY -> "date";
            case MONTH -> "yearmonth";
            case YEAR -> "year";
            case COUNT -> "integer";
            case MONEY, SIGNED_MONEY, QUANTITY -> "number";
            case TEXT, KEYS, WORDS, WORD, HOURS, SIGNED_HOURS, CLOCK, PASSED -> "string";
        };
    }

    private static Map<String, Object> constraints(Cell cell) {
        Map<String, Object> constraints = new LinkedHashMap<>();
        if (cell.need() == Need.REQUIRED) {
            constraints.put("required", true);
        }
        switch (cell.kind()) {
            case WORD -> constraints.put("enum", cell.words());
            case MONEY, COUNT -> constraints.put("minimum", 0);
            case HOURS -> constraints.put("pattern", NUMBER.substring("[+-]?".length()) + "|" + SPAN);
            case SIGNED_HOURS -> constraints.put("pattern", NUMBER + "|[+-]?" + SPAN);
            case CLOCK -> constraints.put("pattern", SPAN);
            default -> {}
        }
        return constraints;
    }
}
