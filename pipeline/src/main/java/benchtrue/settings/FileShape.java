package benchtrue.settings;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * How the table of a {@code [[files]]} rule lies in its files.
 *
 * @param sheets of a workbook, with {@code *} and {@code ?}; empty where the one sheet is told from the columns
 * @param effective from which day a price book among the exports holds
 * @param fillDown headers of columns whose cell stands once above the rows it holds for
 * @param patterns canonical column = the pattern whose group is what its cells say
 * @param unpivot the columns that hold one entry a cell
 */
public record FileShape(
        List<String> sheets,
        Optional<LocalDate> effective,
        List<String> fillDown,
        List<Pair> patterns,
        Optional<Unpivot> unpivot) {
    /** One table a file, one row an entry, one cell a value. */
    public static final FileShape PLAIN =
            new FileShape(List.of(), Optional.empty(), List.of(), List.of(), Optional.empty());

    public FileShape {
        sheets = List.copyOf(sheets);
        fillDown = List.copyOf(fillDown);
        patterns = List.copyOf(patterns);
    }
}
