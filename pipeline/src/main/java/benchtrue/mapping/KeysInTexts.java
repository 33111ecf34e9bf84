package benchtrue.mapping;

import benchtrue.intake.ColumnProfile;
import benchtrue.intake.columns.Column;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds keys of tickets inside texts, by what the keys of the tickets file look like. */
final class KeysInTexts {
    private static final double MANY = 0.5;
    private static final double BETTER = 0.2;
    private static final int MOST_FORMS = 3;
    private static final int FEWEST = 3;
    private static final Pattern DIGITS = Pattern.compile("\\d+");

    /** A key with a sign before it, which people leave out elsewhere. */
    static final Pattern SIGNED = Pattern.compile("[^\\p{L}\\p{N}]+([\\p{L}\\p{N}].*)");

    /** Stands for a run of digits, as no digit is left in a form. */
    private static final char RUN = '0';

    private final Collection<String> keys;
    private final Optional<String> pattern;

    KeysInTexts(Collection<String> keys) {
        this.keys = keys;
        pattern = keys.size() < FEWEST ? Optional.empty() : pattern(keys);
    }

    /** Returns keys without the sign before each, such as 1043 for #1043; empty where not all have one. */
    static Set<String> bare(Collection<String> keys) {
        Set<String> bare = new HashSet<>();
        for (String key : keys) {
            Matcher signed = SIGNED.matcher(key);
            if (!signed.matches()) {
                return Set.of();
            }
            bare.add(signed.group(1));
        }
        return bare;
    }

    /** Returns a pattern with one group for keys that are written alike; empty where they are not. */
    private static Optional<String> pattern(Collection<String> keys) {
        Map<String, int[][]> forms = new TreeMap<>();
        for (String key : keys) {
            List<String> runs =
                    DIGITS.matcher(key).results().map(run -> run.group()).toList();
            int[][] lengths = forms.computeIfAbsent(
                    DIGITS.matcher(key).replaceAll(String.valueOf(RUN)), fresh -> new int[runs.size()][]);
            for (int run = 0; run < runs.size(); run++) {
                int length = runs.get(run).length();
                lengths[run] = lengths[run] == null
                        ? new int[] {length, length}
                        : new int[] {Math.min(lengths[run][0], length), Math.max(lengths[run][1], length)};
            }
        }
        boolean numbered = forms.keySet().stream().allMatch(form -> form.indexOf(RUN) >= 0);
        return forms.size() > MOST_FORMS || !numbered
                ? Optional.empty()
                : Optional.of("(?<![\\p{L}\\d])("
                        + String.join(
                                "|",
                                forms.entrySet().stream()
                                        .map(KeysInTexts::written)
                                        .toList())
                        + ")(?!\\d)");
    }

    private static String written(Map.Entry<String, int[][]> form) {
        StringBuilder written = new StringBuilder();
        int run = 0;
        for (char letter : form.getKey().toCharArray()) {
            if (letter == RUN) {
                int[] length = form.getValue()[run++];
                written.append("\\d{").append(length[0]);
                written.append(length[0] == length[1] ? "}" : "," + (length[1] + 1) + "}");
            } else {
                written.append(Character.isLetterOrDigit(letter) || letter == ' ' ? "" : "\\")
                        .append(letter);
            }
        }
        return written.toString();
    }

    /** Returns the column of several in which most texts hold a key, with its pattern; empty where few do. */
    Optional<Match> in(Match named, List<ColumnProfile> columns, Column column) {
        if (pattern.isEmpty()) {
            return Optional.empty();
        }
        double plain = named == null ? 0 : named.source().among(keys);
        ColumnProfile best = null;
        double most = Math.max(MANY, plain + BETTER);
        for (ColumnProfile source : columns) {
            double share = share(source);
            if (share >= most && source.texts().size() >= FEWEST) {
                most = share;
                best = source;
            }
        }
        return best == null
                ? Optional.empty()
                : Optional.of(new Match(
                        column,
                        best,
                        Math.min(0.95, most),
                        Percent.of(most) + " of its texts with a figure hold a ticket of the tickets file",
                        pattern.get()));
    }

    /** Returns the share of the texts with a figure that hold a key. */
    private double share(ColumnProfile source) {
        Pattern key = Pattern.compile(pattern.orElseThrow());
        long figures = 0;
        long found = 0;
        for (String text : source.texts().keySet()) {
            if (text.chars().anyMatch(Character::isDigit)) {
                figures++;
                Matcher in = key.matcher(text);
                found += in.find() && keys.contains(in.group(1)) ? 1 : 0;
            }
        }
        return figures == 0 || 4 * figures < source.texts().size() ? 0 : (double) found / figures;
    }
}
