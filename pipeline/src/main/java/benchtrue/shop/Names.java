package benchtrue.shop;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/** A dictionary of distinct names in code-unit order; a name's code is its place. */
public final class Names {
    private final String[] sorted;

    private Names(String[] sorted) {
        this.sorted = sorted;
    }

    /** Returns the dictionary of some names, repeats allowed. */
    public static Names of(Collection<String> names) {
        return new Names(new TreeSet<>(names).toArray(String[]::new));
    }

    public int size() {
        return sorted.length;
    }

    /** Returns a code's name; empty for {@link Absent#INDEX}. */
    public String name(int code) {
        return code == Absent.INDEX ? "" : sorted[code];
    }

    /** Returns a name's code, or {@link Absent#INDEX} where the dictionary lacks it. */
    public int code(String name) {
        int place = Arrays.binarySearch(sorted, name);
        return place < 0 ? Absent.INDEX : place;
    }

    /** Returns all names in order. */
    public List<String> all() {
        return List.of(sorted);
    }
}
