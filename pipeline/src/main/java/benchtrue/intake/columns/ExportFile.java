package benchtrue.intake.columns;

import benchtrue.settings.FileRule;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A file, or a sheet of one, to be read.
 *
 * @param path where it lies
 * @param file path within the shop folder with forward slashes
 * @param sheet the workbook's sheet, empty where that is told from the columns
 * @param table the table its rows belong to
 * @param day the day its name tells, or {@link benchtrue.shop.Absent#DAY}
 * @param mapping how its names and words are translated
 * @param beside what else is read from the same file, or the same sheet
 */
public record ExportFile(
        Path path,
        String file,
        Optional<String> sheet,
        Table table,
        int day,
        Mapping mapping,
        List<MappedTable> beside) {
    public ExportFile {
        beside = List.copyOf(beside);
    }

    /** Returns the name for messages, which is no other's of the table. */
    public String name() {
        return sheet.map(name -> file + " sheet \"" + Problem.shown(name) + "\"")
                .orElse(file);
    }

    /** Returns the file's name without its folder. */
    public String fileName() {
        return file.substring(file.indexOf('/') + 1);
    }

    /** Returns whether it is a version of a table that holds from a day on, and no rows of one that came back. */
    public boolean isBook() {
        return file.startsWith(table.title() + "/")
                || rule().flatMap(rule -> rule.shape().effective()).isPresent();
    }

    /** Returns how often its keys stand in it: where lines stand on their tickets' rows, a ticket has several. */
    public InputFile.Keys keys() {
        return table == Table.TICKETS && !beside.isEmpty() ? InputFile.Keys.ON_EACH_LINE : InputFile.Keys.ONCE;
    }

    /** Returns what the settings say of the file. */
    public Optional<FileRule> rule() {
        return mapping.rule();
    }

    /** Returns whether the file is a workbook by its name. */
    public boolean isSheet() {
        return file.toLowerCase(Locale.ROOT).endsWith(".xlsx");
    }
}
