package benchtrue.intake;

import benchtrue.intake.columns.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands in a file, whether or not it is known which table it is.
 *
 * @param name path within the shop folder with forward slashes
 * @param table the table it is read as; empty where neither its name nor a rule tells
 * @param columns in the file's order; none where it can't be read
 * @param rows how many were looked at
 * @param refusal why it can't be read
 * @param sheet of a workbook with several, else empty
 * @param title what stands above the column names
 * @param headings different texts that stand alone in their rows
 */
public record FileProfile(
        String name,
        Optional<Table> table,
        List<ColumnProfile> columns,
        long rows,
        Optional<String> refusal,
        Optional<String> sheet,
        String title,
        List<String> headings) {
    public FileProfile {
        columns = List.copyOf(columns);
        headings = List.copyOf(headings);
    }

    /** Returns one profile of files with the same columns, by the name of the first. */
    public static FileProfile together(List<FileProfile> alike) {
        FileProfile first = alike.get(0);
        List<ColumnProfile> columns = new ArrayList<>();
        for (int column = 0; column < first.columns.size(); column++) {
            ColumnProfile together = first.columns.get(column);
            for (FileProfile other : alike.subList(1, alike.size())) {
                together = together.with(other.columns.get(column));
            }
            columns.add(together);
        }
        long rows = alike.stream().mapToLong(FileProfile::rows).sum();
        return new FileProfile(
                first.name, first.table, columns, rows, first.refusal, first.sheet, first.title, first.headings);
    }

    /** Returns the file's name without its folder. */
    public String file() {
        return name.substring(name.indexOf('/') + 1);
    }

    /** Returns the name for a person, with the sheet where there are several. */
    public String shown() {
        return sheet.map(found -> name + " sheet \"" + found + "\"").orElse(name);
    }

    /** Returns the names of its columns in the file's order. */
    public List<String> headers() {
        return columns.stream().map(ColumnProfile::header).toList();
    }
}
