package benchtrue.intake;

import benchtrue.shop.Ints;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Where each row stands in its file, and which rows have something unreadable. */
final class RowPlaces {
    private final Ints lines = new Ints();
    private final BitSet unreadable = new BitSet();
    private final Map<Integer, String> columns = new HashMap<>();
    private final Map<String, String> names = new HashMap<>();
    private final Map<Integer, Ragged> ragged = new HashMap<>();

    /** A row whose number of cells differs from the header's. */
    private record Ragged(int cells, int expected, long digest) {}

    int size() {
        return lines.size();
    }

    /**
     * Takes the next row.
     *
     * @param column the column of a wide table that it was made of, else empty
     */
    void add(int line, String column) {
        if (!column.isEmpty()) {
            columns.put(size(), names.computeIfAbsent(column, name -> name));
        }
        lines.add(line);
    }

    /** Returns the column of a wide table that a row was made of, else an empty text. */
    String column(int row) {
        return columns.isEmpty() ? "" : columns.getOrDefault(row, "");
    }

    /** Marks the newest row as one that can't be used. */
    void markUnreadable() {
        unreadable.set(size() - 1);
    }

    /** Marks the newest row as one with another number of cells than the header, known by a digest of its bytes. */
    void markRagged(int cells, int expected, long digest) {
        markUnreadable();
        ragged.put(size() - 1, new Ragged(cells, expected, digest));
    }

    long raggedDigest(int row) {
        Ragged found = ragged.isEmpty() ? null : ragged.get(row);
        return found == null ? 0 : found.digest;
    }

    int line(int row) {
        return lines.get(row);
    }

    boolean readable(int row) {
        return !unreadable.get(row);
    }

    Optional<String> ragged(int row) {
        return Optional.ofNullable(ragged.get(row))
                .map(found -> "row: found " + found.cells + " cells, expected " + found.expected
                        + " as in the header, so that no cell can be trusted; look for a missing or an unquoted comma");
    }
}
