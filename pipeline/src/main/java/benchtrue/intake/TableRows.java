package benchtrue.intake;

import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.Problem;
import benchtrue.intake.columns.SourceColumn;
import benchtrue.intake.columns.Table;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All rows of one table from all its files, older exports first, as columns of codes into dictionaries of distinct texts.
 * Code 0 is the empty text; so is every cell of a column that no file has. Rows that can't be used are in here too.
 */
public final class TableRows {
    private final Table table;
    private final TextColumn[] columns;
    private final TextColumn[] sources;
    private final RowPlaces places;
    private final List<InputFile> files;

    TableRows(Table table, TextColumn[] columns, TextColumn[] sources, RowPlaces places, List<InputFile> files) {
        this.table = table;
        this.columns = columns;
        this.sources = sources;
        this.places = places;
        this.files = List.copyOf(files);
    }

    static TableRows none(Table table) {
        return new TableRowsBuilder(table).build();
    }

    public Table table() {
        return table;
    }

    /** Returns how many rows there are. */
    public int size() {
        return places.size();
    }

    /** Returns the files, older exports first. */
    public List<InputFile> files() {
        return files;
    }

    /** Returns the place in {@link #files} of a row's file. */
    public int file(int row) {
        int low = 0;
        int high = files.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (files.get(middle).firstRow() <= row) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** Returns the line of its file on which a row begins. */
    public int line(int row) {
        return places.line(row);
    }

    /** Returns where a row stands, such as {@code exports/time-log.csv line 12}. */
    public String place(int row) {
        String column = places.column(row);
        return files.get(file(row)).name() + " line " + line(row)
                + (column.isEmpty() ? "" : " column \"" + Problem.shown(column) + "\"");
    }

    /** Returns whether any file has the column. */
    public boolean has(Column column) {
        return home(column)[column.ordinal()] != null;
    }

    /** Returns a column; one without rows where no file has it. */
    public TextColumn column(Column column) {
        TextColumn found = home(column)[column.ordinal()];
        return found == null ? new TextColumn(column, 0) : found;
    }

    /** Returns the code of a cell. */
    public int code(Column column, int row) {
        TextColumn found = home(column)[column.ordinal()];
        return found == null ? 0 : found.code(row);
    }

    /** Returns the original text of a cell. */
    public String text(Column column, int row) {
        TextColumn found = home(column)[column.ordinal()];
        return found == null ? "" : found.text(found.code(row));
    }

    /** Returns the value of a cell, or {@link Absent#AMOUNT} where it is empty or can't be read. */
    public long value(Column column, int row) {
        TextColumn found = home(column)[column.ordinal()];
        return found == null ? Absent.AMOUNT : found.valueAt(row);
    }

    /** Returns the day, month or year of a cell, or {@link Absent#DAY} where it is empty or can't be read. */
    public int day(Column column, int row) {
        TextColumn found = home(column)[column.ordinal()];
        return found == null ? Absent.DAY : found.dayAt(row);
    }

    /** Returns whether a row's cells can all be read and its needed ones are there. */
    public boolean readable(int row) {
        return places.readable(row);
    }

    /**
     * Returns a digest of a row whose number of cells differs from the header's, of which nothing else is kept; 0 for
     * every other row.
     */
    public long raggedDigest(int row) {
        return places.raggedDigest(row);
    }

    /** Returns everything that is wrong with a row's cells, in words. */
    public List<String> problems(int row) {
        Optional<String> ragged = places.ragged(row);
        if (ragged.isPresent()) {
            return List.of(ragged.get());
        }
        List<String> problems = new ArrayList<>();
        for (Column column : table.columns()) {
            TextColumn found = columns[column.ordinal()];
            Problem problem = found == null ? Problem.NONE : found.problem(found.code(row));
            if (problem != Problem.NONE) {
                problems.add(problem.words(column, found.text(found.code(row))));
            }
        }
        return problems;
    }

    private TextColumn[] home(Column column) {
        return column instanceof SourceColumn ? sources : columns;
    }
}
