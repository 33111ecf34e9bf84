package benchtrue.hours;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Words and how often they stand, coded so that codes do not depend on the order of rows. */
final class Levels {
    private final Map<String, Integer> codes = new HashMap<>();
    private final List<String> names = new ArrayList<>();

    private Levels() {}

    /** Returns the words that stand often enough; the empty word never does. */
    static Levels of(Map<String, Integer> counts, int least, int most) {
        Levels levels = new Levels();
        List<Map.Entry<String, Integer>> sorted = new ArrayList<>(new TreeMap<>(counts).entrySet());
        sorted.sort(Map.Entry.<String, Integer>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()));
        for (Map.Entry<String, Integer> word : sorted) {
            if (!word.getKey().isEmpty() && word.getValue() >= least && levels.names.size() < most) {
                levels.codes.put(word.getKey(), levels.names.size());
                levels.names.add(word.getKey());
            }
        }
        return levels;
    }

    int size() {
        return names.size();
    }

    /** Returns a word's code; {@link #size} for no word, or one too rare to say anything. */
    int code(String word) {
        return codes.getOrDefault(word, names.size());
    }

    String name(int code) {
        return names.get(code);
    }
}
