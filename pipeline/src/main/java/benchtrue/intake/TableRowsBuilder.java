package benchtrue.intake;

import java.util.ArrayList;
import java.util.List;

/** Takes the records of a table's files one after the other. */
final class TableRowsBuilder {
    private final Table table;
    private final TextColumn[] columns;
    private final TextColumn[] sources = new TextColumn[SourceColumn.values().length];
    private final RowPlaces places = new RowPlaces();
    private final List<InputFile> files = new ArrayList<>();
    private TextColumn[] present = {};
    private int[] cells = {};
    private int headerSize;

    TableRowsBuilder(Table table) {
        this.table = table;
        columns = new TextColumn[table.columns().size()];
    }

    int size() {
        return places.size();
    }

    /** Begins a file whose header was understood. */
    void begin(Header header) {
        List<TextColumn> found = new ArrayList<>();
        List<Integer> at = new ArrayList<>();
        for (Column column : header.columns()) {
            if (column.cell().kind() != Kind.PASSED) {
                found.add(column(column));
                at.add(header.cell(column));
            }
        }
        for (TextColumn[] known : List.of(columns, sources)) {
            for (TextColumn column : known) {
                if (column != null && !found.contains(column)) {
                    found.add(column);
                    at.add(Header.NO_CELL);
                }
            }
        }
        present = found.toArray(TextColumn[]::new);
        cells = at.stream().mapToInt(Integer::intValue).toArray();
        headerSize = header.size();
    }

    private TextColumn column(Column column) {
        TextColumn[] home = column instanceof SourceColumn ? sources : columns;
        if (home[column.ordinal()] == null) {
            home[column.ordinal()] = new TextColumn(column, size());
        }
        return home[column.ordinal()];
    }

    /** Takes one record. */
    void add(Records record, CellFormat format, int formatNumber) {
        places.add(record.line());
        if (record.size() != headerSize) {
            addRagged(record);
            return;
        }
        boolean usable = true;
        for (int i = 0; i < present.length; i++) {
            int cell = cells[i];
            usable &= cell == Header.NO_CELL
                    ? present[i].addEmpty()
                    : present[i].add(record.bytes(), record.start(cell), record.end(cell), format, formatNumber);
        }
        if (!usable) {
            places.markUnreadable();
        }
    }

    /** Keeps nothing of a row whose cells may stand in the wrong columns: among them may be what is nobody's business. */
    private void addRagged(Records record) {
        for (TextColumn column : present) {
            column.addEmpty();
        }
        places.markRagged(record.size(), headerSize, Digests.ofRecord(record));
    }

    /** Ends a file. */
    void end(InputFile file) {
        files.add(file);
    }

    TableRows build() {
        return new TableRows(table, columns, sources, places, files);
    }
}
