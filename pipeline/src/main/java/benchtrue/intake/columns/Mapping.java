package benchtrue.intake.columns;

import benchtrue.settings.FileRule;
import benchtrue.settings.HoursUnit;
import benchtrue.settings.Pair;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the names, words and units of some files become the data contract's.
 *
 * @param rule the owner's rule, empty for files in the contract's own words
 * @param headers the file's header of each column that has another name there
 * @param words the contract's word for each word of the file, by {@link #plain}
 * @param constants the text that every row has in a column
 * @param patterns the pattern whose group is what a column's cells say
 * @param hours what a number in a cell for hours counts
 */
public record Mapping(
        Optional<FileRule> rule,
        Map<Column, Pair> headers,
        Map<Column, Map<String, String>> words,
        Map<Column, String> constants,
        Map<Column, Pattern> patterns,
        HoursUnit hours) {
    /** Files in the contract's own words. */
    public static final Mapping NONE =
            new Mapping(Optional.empty(), Map.of(), Map.of(), Map.of(), Map.of(), HoursUnit.HOURS);

    public Mapping {
        headers = Map.copyOf(headers);
        words = Map.copyOf(words);
        constants = Map.copyOf(constants);
        patterns = Map.copyOf(patterns);
    }

    /** Returns how the files' rows lie. */
    public Shape shape() {
        return Shape.of(rule);
    }

    /**
     * Returns the part of a text that counts. A text with no figure in it holds no key: where a row can do without, it has
     * none; any other is kept whole, and refused where it can't be used.
     */
    public String part(Column column, String text) {
        Pattern pattern = patterns.get(column);
        if (pattern == null) {
            return text;
        }
        Matcher found = pattern.matcher(text);
        if (found.find() && found.group(1) != null) {
            return found.group(1).strip();
        }
        boolean none = column.cell().need() == Need.OPTIONAL && text.chars().noneMatch(Character::isDigit);
        return none ? "" : text;
    }

    /** Returns whether a column has another name than the contract's, so that a file in the contract's own can't be meant. */
    public boolean renames() {
        return headers.entrySet().stream()
                .anyMatch(pair ->
                        !plain(pair.getValue().text()).equals(pair.getKey().header()));
    }

    /** Returns text as it is compared: systems differ in case, spaces around it and how they write an accent. */
    public static String plain(String text) {
        return Normalizer.normalize(text.strip(), Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }
}
