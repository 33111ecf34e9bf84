package benchtrue.format;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name that a mistyped one most likely meant, by edit distance (Levenshtein 1966). */
public final class NearestName {
    private NearestName() {}

    /** Returns the nearest known name that differs in at most a third of its letters, whatever the case; empty without one. */
    public static Optional<String> to(String found, Collection<String> known) {
        String wanted = plain(found);
        String best = null;
        int least = Integer.MAX_VALUE;
        for (String name : known) {
            int limit = Math.max(1, Math.max(name.length(), wanted.length()) / 3);
            if (Math.abs(name.length() - wanted.length()) > limit) {
                continue;
            }
            int distance = distance(wanted, plain(name));
            if (distance <= limit && distance < least) {
                best = name;
                least = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    private static int distance(String left, String right) {
        int[] row = new int[right.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= left.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int swap = diagonal + (left.charAt(i - 1) == right.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(swap, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[row.length - 1];
    }
}
