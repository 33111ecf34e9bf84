package benchtrue.intake;

import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.Table;
import benchtrue.shop.Notice;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Everything that stands in the shop's files, row by row, with nothing decided yet.
 *
 * @param tables rows of every table of which a file was there
 * @param files every file that was read, older exports first within a table
 * @param notices files and columns that were not read
 */
public record Exports(Map<Table, TableRows> tables, List<InputFile> files, List<Notice> notices) {
    public Exports {
        tables = new EnumMap<>(tables);
        files = List.copyOf(files);
        notices = List.copyOf(notices);
    }

    /** Returns the rows of a table; none where no file was there. */
    public TableRows rows(Table table) {
        return tables.containsKey(table) ? tables.get(table) : TableRows.none(table);
    }
}
