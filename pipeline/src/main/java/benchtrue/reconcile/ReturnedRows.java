package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.SourceColumn;
import benchtrue.shop.Absent;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Rows that were set aside, corrected and put back, each with the row it came from. */
final class ReturnedRows {
    private final RowDispositions table;
    private final TableRows rows;
    private final Map<Integer, Integer> successors = new TreeMap<>();
    private final Map<Integer, Integer> sources = new HashMap<>();

    private ReturnedRows(RowDispositions table) {
        this.table = table;
        rows = table.rows();
    }

    static ReturnedRows find(RowDispositions table) {
        ReturnedRows returned = new ReturnedRows(table);
        if (table.rows().has(SourceColumn.SOURCE_DIGEST)) {
            returned.find();
        }
        return returned;
    }

    private void find() {
        Map<String, InputFile> files = new HashMap<>();
        rows.files().forEach(file -> files.put(file.name(), file));
        for (int row = 0; row < rows.size(); row++) {
            if (rows.code(SourceColumn.SOURCE_FILE, row) == 0) {
                continue;
            }
            Optional<Integer> source = source(row, files.get(rows.text(SourceColumn.SOURCE_FILE, row)));
            if (source.isEmpty() || leadsTo(row, source.get())) {
                table.doubt(Doubt.SOURCE_NOT_FOUND, row);
            } else {
                succeed(row, source.get());
            }
        }
    }

    private Optional<Integer> source(int row, InputFile file) {
        int line = rows.day(SourceColumn.SOURCE_LINE, row);
        if (file == null || !Absent.has(line)) {
            return Optional.empty();
        }
        int low = file.firstRow();
        int high = low + file.rows();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (rows.line(middle) < line) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        // A row of a wide table holds several entries.
        for (; low < file.firstRow() + file.rows() && rows.line(low) == line; low++) {
            if (RowText.digest(rows, low).equals(rows.text(SourceColumn.SOURCE_DIGEST, row))) {
                return Optional.of(low);
            }
        }
        return Optional.empty();
    }

    /** Returns whether following the successors of a row ends at another: a circle that a file can claim. */
    private boolean leadsTo(int row, int end) {
        Integer at = row;
        while (at != null && at != end) {
            at = successors.get(at);
        }
        return at != null;
    }

    /** Where two rows came from the same one, the later file's counts and takes the place of the other. */
    private void succeed(int row, int source) {
        Integer rival = successors.put(source, row);
        sources.put(row, source);
        if (rival != null) {
            int end = rival;
            while (successors.containsKey(end)) {
                end = successors.get(end);
            }
            successors.put(source, rival);
            successors.put(end, row);
        }
    }

    /** Returns the rows that something came back for, older exports first. */
    Iterable<Integer> gone() {
        return successors.keySet();
    }

    boolean isGone(int row) {
        return successors.containsKey(row);
    }

    boolean isReturned(int row) {
        return sources.containsKey(row);
    }

    /** Returns the row that counts in the place of another: the last that came back for it, else itself. */
    int last(int row) {
        int at = row;
        while (successors.containsKey(at)) {
            at = successors.get(at);
        }
        return at;
    }
}
