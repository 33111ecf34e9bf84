package benchtrue.sample;

import java.util.Map;
import java.util.TreeMap;

/** Counts what was planted. Mutable. */
final class Tally {
    private final Map<String, Long> counts = new TreeMap<>();

    void add(String kind) {
        counts.merge(kind, 1L, Long::sum);
    }

    Map<String, Long> counts() {
        return new TreeMap<>(counts);
    }
}
