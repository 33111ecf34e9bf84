package benchtrue.revision;

import benchtrue.shop.Absent;
import benchtrue.shop.PriceBook;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A price book whose first day is still to come.
 *
 * @param book its rows
 * @param decided the day on which each of its rows was decided, by repair type; rows that it took over are left out, and a
 *     book written by hand has none
 */
public record ComingBook(PriceBook book, SortedMap<String, Integer> decided) {
    public ComingBook {
        decided = Collections.unmodifiableSortedMap(new TreeMap<>(decided));
    }

    /** Returns the day of the newest decision on it, {@link Absent#DAY} for a book written by hand. */
    public int decidedOn() {
        return decided.values().stream().mapToInt(Integer::intValue).max().orElse(Absent.DAY);
    }
}
