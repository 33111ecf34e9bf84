package benchtrue.intake;

import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.ColumnNames;
import benchtrue.intake.columns.ExportFile;
import benchtrue.intake.columns.Table;
import benchtrue.intake.dialects.TotalWords;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Counts what stands in the columns of one table, row by row. Mutable. */
final class ProfiledRows {
    /** In a narrower table a row may well have one cell. */
    private static final int FEWEST_COLUMNS = 3;

    private final List<String> headers;
    private final String title;
    private final List<Map<String, Long>> counts = new ArrayList<>();
    private final long[] filled;
    private final Set<String> headings = new LinkedHashSet<>();
    private int rows;

    /**
     * Takes the table's beginning.
     *
     * @param title what stands above its column names
     */
    ProfiledRows(List<String> headers, String title) {
        this.headers = headers;
        this.title = title;
        headers.forEach(header -> counts.add(new LinkedHashMap<>()));
        filled = new long[headers.size()];
    }

    List<String> headers() {
        return headers;
    }

    /** Takes the next row. */
    void take(List<String> row) {
        if (repeatsOrNames(row)) {
            row.stream().filter(text -> isHeading(row, text)).forEach(headings::add);
            return;
        }
        rows++;
        for (int cell = 0; cell < Math.min(row.size(), filled.length); cell++) {
            if (!row.get(cell).isEmpty()) {
                filled[cell]++;
                count(counts.get(cell), row.get(cell));
            }
        }
    }

    private static boolean isHeading(List<String> row, String text) {
        return !text.isEmpty()
                && row.stream().filter(other -> !other.isEmpty()).count() == 1
                && text.matches("\\p{L}[\\p{L} .'&-]+")
                && !TotalWords.isPhrase(text);
    }

    /** Returns whether a row is a heading or a total by its looks: it tells nothing of what stands in the columns. */
    private boolean repeatsOrNames(List<String> row) {
        long told = row.stream().filter(text -> !text.isEmpty()).count();
        return told == 0
                || headers.size() >= FEWEST_COLUMNS && told == 1
                || row.equals(headers)
                || told < headers.size() && row.stream().anyMatch(TotalWords::isPhrase);
    }

    private static void count(Map<String, Long> counts, String text) {
        if (counts.size() < ColumnProfile.MOST_TEXTS || counts.containsKey(text)) {
            counts.merge(text, 1L, Long::sum);
        }
    }

    /** Returns what was counted. */
    FileProfile profile(ExportFile file, Optional<Table> table) {
        Optional<Table> known = table.or(
                        () -> file.file().startsWith("price-book/") ? Optional.of(Table.PRICE_BOOK) : table)
                .filter(found -> new ColumnNames(found, file.mapping()).complete(headers));
        List<ColumnProfile> columns = new ArrayList<>();
        for (int cell = 0; cell < filled.length; cell++) {
            String header = headers.get(cell);
            Optional<Column> column = known.map(found -> new ColumnNames(found, file.mapping()).column(header));
            columns.add(new ColumnProfile(header, column, filled[cell], counts.get(cell)));
        }
        return new FileProfile(
                file.file(), known, columns, rows, Optional.empty(), file.sheet(), title, List.copyOf(headings));
    }
}
