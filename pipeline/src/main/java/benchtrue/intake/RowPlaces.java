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
    private final Map<Integer, int[]> ragged = new HashMap<>();

    int size() {
        return lines.size();
    }

    void add(int line) {
        lines.add(line);
    }

    /** Marks the newest row as one that can't be used. */
    void markUnreadable() {
        unreadable.set(size() - 1);
    }

    /** Marks the newest row as one with another number of cells than the header. */
    void markRagged(int cells, int expected) {
        markUnreadable();
        ragged.put(size() - 1, new int[] {cells, expected});
    }

    int line(int row) {
        return lines.get(row);
    }

    boolean readable(int row) {
        return !unreadable.get(row);
    }

    Optional<String> ragged(int row) {
        return Optional.ofNullable(ragged.get(row))
                .map(cells -> "row: found " + cells[0] + " cells, expected " + cells[1]
                        + " as in the header; look for a missing or an unquoted comma");
    }
}
