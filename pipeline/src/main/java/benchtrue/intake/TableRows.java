package benchtrue.intake;

import benchtrue.shop.Absent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

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

    /** Returns the table. */
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
        return files.get(file(row)).name() + " line " + line(row);
    }

    /** Returns whether any file has the column. */
    public boolean has(Column column) {
        return find(column) != null;
    }

    /** Returns the code of a cell. */
    public int code(Column column, int row) {
        TextColumn found = find(column);
        return found == null ? 0 : found.code(row);
    }

    /** Returns how many distinct texts a column has, the empty one included. */
    public int distinct(Column column) {
        TextColumn found = find(column);
        return found == null ? 1 : found.distinct();
    }

    /** Returns the text of a code. */
    public String textOf(Column column, int code) {
        TextColumn found = find(column);
        return found == null ? "" : found.text(code);
    }

    /** Returns the original text of a cell. */
    public String text(Column column, int row) {
        return textOf(column, code(column, row));
    }

    /** Returns the value of a code: seconds, ten-thousandths, days, months, a count, the place of a word; or absent. */
    public long valueOf(Column column, int code) {
        TextColumn found = find(column);
        return found == null ? Absent.AMOUNT : found.value(code);
    }

    /** Returns the value of a cell, or {@link Absent#AMOUNT} where it is empty or can't be read. */
    public long value(Column column, int row) {
        TextColumn found = find(column);
        return found == null ? Absent.AMOUNT : found.value(found.code(row));
    }

    /** Returns the day, month or year of a cell, or {@link Absent#DAY} where it is empty or can't be read. */
    public int day(Column column, int row) {
        long value = value(column, row);
        return Absent.has(value) ? (int) value : Absent.DAY;
    }

    /** Returns what rounding to whole seconds or ten-thousandths added to a code's value. */
    public BigDecimal roundingOf(Column column, int code) {
        TextColumn found = find(column);
        return found == null ? BigDecimal.ZERO : found.rounding(code);
    }

    /** Returns for each code of a column the least code that says the same. */
    public int[] sameAs(Column column) {
        TextColumn found = find(column);
        return found == null ? new int[1] : found.sameAs();
    }

    /** Returns whether a code's text is there and can be read. */
    public boolean usable(Column column, int code) {
        TextColumn found = find(column);
        return found != null && code != 0 && found.problem(code) == Problem.NONE;
    }

    /** Returns whether a row's cells can all be read and its needed ones are there. */
    public boolean readable(int row) {
        return places.readable(row);
    }

    /** Returns everything that is wrong with a row's cells, in words. */
    public List<String> problems(int row) {
        List<String> problems = new ArrayList<>();
        places.ragged(row).ifPresent(problems::add);
        for (Column column : table.columns()) {
            TextColumn found = find(column);
            Problem problem = found == null ? Problem.NONE : found.problem(found.code(row));
            if (problem != Problem.NONE) {
                problems.add(problem.words(column, found.text(found.code(row))));
            }
        }
        return problems;
    }

    private TextColumn find(Column column) {
        return column instanceof SourceColumn ? sources[column.ordinal()] : columns[column.ordinal()];
    }
}
