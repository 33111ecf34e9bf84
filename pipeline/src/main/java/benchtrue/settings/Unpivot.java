package benchtrue.settings;

import java.util.List;
import java.util.Optional;

/**
 * The columns of a wide table that hold one entry a cell.
 *
 * @param columns their headers, with {@code *} and {@code ?}; empty for all whose header is of the kind
 * @param header what their headers say
 * @param after the column with the date, week or month from which the headers count
 * @param before the column with the date up to which weekdays count
 * @param line of {@code shop.toml}, from 1, for messages
 */
public record Unpivot(
        List<String> columns, UnpivotHeader header, Optional<String> after, Optional<String> before, int line) {
    public Unpivot {
        columns = List.copyOf(columns);
    }
}
