package benchtrue.format;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** The known name that somebody most likely meant, by the fewest changed, added or dropped letters (Levenshtein 1966). */
public final class Spelling {
    private static final LevenshteinDistance CHANGES = LevenshteinDistance.getDefaultInstance();

    private Spelling() {}

    /** Returns how many letters must be changed, added or dropped to make one text of the other. */
    public static int changes(String from, String to) {
        return CHANGES.apply(from, to);
    }

    /**
     * Returns the nearest known name, case apart; the first in the collection's order among equals. Empty where even the
     * nearest shares less than half of its letters.
     */
    public static Optional<String> nearest(String word, Collection<String> known) {
        return nearest(word.toLowerCase(Locale.ROOT), known, 2, name -> name.toLowerCase(Locale.ROOT));
    }

    /** Returns the nearest known name that differs in at most a third of its letters, case and hyphens apart. */
    public static Optional<String> mistyped(String word, Collection<String> known) {
        return nearest(plain(word), known, 3, Spelling::plain);
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    private static Optional<String> nearest(
            String wanted, Collection<String> known, int part, UnaryOperator<String> plain) {
        String best = null;
        int fewest = Integer.MAX_VALUE;
        for (String name : known) {
            int most = Math.max(1, Math.max(wanted.length(), name.length()) / part);
            if (Math.abs(name.length() - wanted.length()) <= most) {
                int changes = changes(wanted, plain.apply(name));
                if (changes <= most && changes < fewest) {
                    best = name;
                    fewest = changes;
                }
            }
        }
        return Optional.ofNullable(best);
    }
}
