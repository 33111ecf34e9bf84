package benchtrue.reconcile;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Words separated by {@code ;}. */
final class Traits {
    private Traits() {}

    /** Returns the words in order, without repeats, in lower case. */
    static List<String> of(String text) {
        return Stream.of(text.split(";"))
                .map(word -> word.strip().toLowerCase(Locale.ROOT))
                .filter(word -> !word.isEmpty())
                .distinct()
                .sorted()
                .toList();
    }
}
