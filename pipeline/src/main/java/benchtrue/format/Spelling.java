package benchtrue.format;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The known name that somebody most likely meant. */
public final class Spelling {
    private Spelling() {}

    /**
     * Returns the known name that needs the fewest changed, added or dropped letters (Levenshtein 1966), case apart; the
     * first in the collection's order among equals. Empty where even the nearest shares less than half of its letters.
     */
    public static Optional<String> nearest(String word, Collection<String> known) {
        String wanted = word.toLowerCase(Locale.ROOT);
        String best = null;
        int fewest = Integer.MAX_VALUE;
        for (String name : known) {
            int changes = changes(wanted, name.toLowerCase(Locale.ROOT));
            if (changes < fewest && 2 * changes <= Math.max(wanted.length(), name.length())) {
                best = name;
                fewest = changes;
            }
        }
        return Optional.ofNullable(best);
    }

    private static int changes(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int replaced = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }
}
