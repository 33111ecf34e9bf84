package benchtrue.mapping;

import benchtrue.format.Spelling;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Whether two names of a repair are spellings of one: case, accents, hyphens and word order apart, with words cut short, or with
 * one or two letters off. A rule of thumb, not a probability.
 */
final class RepairNames {
    /** From here on two names are taken for one. */
    static final double ALIKE = 0.75;

    private static final int SHORT = 4;
    private static final int LONG = 8;

    private RepairNames() {}

    /** Returns 1 for the same words, {@link #ALIKE} and more for spellings of one name, less for others. */
    static double likeness(String left, String right) {
        String plainLeft = PlainWords.plain(left);
        String plainRight = PlainWords.plain(right);
        if (!figures(plainLeft).equals(figures(plainRight)) || plainLeft.isEmpty() || plainRight.isEmpty()) {
            return 0;
        }
        if (joined(plainLeft).equals(joined(plainRight)) || sorted(plainLeft).equals(sorted(plainRight))) {
            return 1;
        }
        double words = words(List.of(plainLeft.split(" ")), List.of(plainRight.split(" ")));
        return words > 0 ? words : near(plainLeft, plainRight);
    }

    /** Figures tell: a setup of six strings is not one of twelve. */
    private static String figures(String plain) {
        return plain.replaceAll("[^0-9]+", " ").strip();
    }

    private static String joined(String plain) {
        return plain.replace(" ", "");
    }

    /** Returns a name's plain words in order. */
    static String sorted(String name) {
        String[] words = PlainWords.plain(name).split(" ");
        Arrays.sort(words);
        return String.join(" ", words);
    }

    private static double near(String left, String right) {
        String one = joined(left);
        String other = joined(right);
        int changes = Spelling.changes(one, other);
        if (changes == 1 && Math.min(one.length(), other.length()) >= SHORT + 2 && one.charAt(0) == other.charAt(0)) {
            return 0.85;
        }
        return 0.7
                * (1
                        - (double) Spelling.changes(sorted(left), sorted(right))
                                / Math.max(left.length(), right.length()));
    }

    /** Returns how alike names of equally many words are, whatever their order; 0 where a word has no fellow. */
    private static double words(List<String> left, List<String> right) {
        if (left.size() != right.size()) {
            return 0;
        }
        List<String> open = new ArrayList<>(right);
        int changes = 0;
        int cut = 0;
        for (String word : left) {
            String fellow = open.stream().filter(word::equals).findFirst().orElse(null);
            if (fellow == null) {
                fellow = open.stream()
                        .filter(other -> mistyped(word, other))
                        .findFirst()
                        .orElse(null);
                changes += fellow == null ? 0 : Spelling.changes(word, fellow);
            }
            if (fellow == null) {
                fellow = open.stream()
                        .filter(other -> isCut(word, other) || isCut(other, word))
                        .findFirst()
                        .orElse(null);
                cut++;
            }
            if (fellow == null) {
                return 0;
            }
            open.remove(fellow);
        }
        boolean told = cut < left.size();
        return changes > 2 || !told ? 0 : 1 - 0.07 * changes - 0.1 * cut;
    }

    private static boolean mistyped(String word, String other) {
        int shorter = Math.min(word.length(), other.length());
        int most = shorter >= LONG ? 2 : shorter >= SHORT ? 1 : 0;
        boolean plural = (word + "s").equals(other) || (other + "s").equals(word);
        return plural || most > 0 && word.charAt(0) == other.charAt(0) && Spelling.changes(word, other) <= most;
    }

    /** Returns whether a word is another one cut short: its first letter, then some of its letters in their order. */
    private static boolean isCut(String word, String whole) {
        if (word.length() < 2
                || word.length() > SHORT
                || whole.length() < word.length() + 2
                || word.charAt(0) != whole.charAt(0)) {
            return false;
        }
        int at = 0;
        for (int letter = 0; letter < whole.length() && at < word.length(); letter++) {
            at += whole.charAt(letter) == word.charAt(at) ? 1 : 0;
        }
        return at == word.length();
    }
}
