package benchtrue.intake.columns;

import benchtrue.settings.FileRule;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * A file to be read.
 *
 * @param path where it lies
 * @param name path within the shop folder with forward slashes
 * @param table the table its rows belong to
 * @param day the day its name tells, or {@link benchtrue.shop.Absent#DAY}
 * @param mapping how its names and words are translated
 */
public record ExportFile(Path path, String name, Table table, int day, Mapping mapping) {
    /** Returns what the settings say of the file. */
    public Optional<FileRule> rule() {
        return mapping.rule();
    }

    /** Returns whether the file is a workbook by its name. */
    public boolean isSheet() {
        return name.toLowerCase(Locale.ROOT).endsWith(".xlsx");
    }
}
