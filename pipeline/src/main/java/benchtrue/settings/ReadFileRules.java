package benchtrue.settings;

import benchtrue.format.Words;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Reads the {@code [[files]]} rules. */
final class ReadFileRules {
    /** The section's name. */
    static final String SECTION = "files";

    /** The section of words that mean the same in every file. */
    static final String WORDS = "words";

    /** The key within the section of entries. */
    static final String SPAN = "span";

    private static final int LAST_HEADER_LINE = 10_000;

    private ReadFileRules() {}

    /** Returns the rules in the file's order. */
    static List<FileRule> read(TomlArray rules) {
        return Section.list(rules, SECTION).stream().map(ReadFileRules::rule).toList();
    }

    private static FileRule rule(Section rule) {
        return new FileRule(
                rule.needed(SettingsKey.FILE_NAME, rule.text(SettingsKey.FILE_NAME, ReadFileRules::name)),
                rule.needed(SettingsKey.FILE_TABLE, rule.text(SettingsKey.FILE_TABLE, table -> table)),
                rule.text(SettingsKey.FILE_ENCODING, ReadFileRules::encoding),
                rule.text(SettingsKey.FILE_DELIMITER, ReadFileRules::delimiter),
                rule.text(SettingsKey.FILE_QUOTE, ReadFileRules::quote),
                rule.text(SettingsKey.FILE_DECIMAL, ReadFileRules::decimal),
                rule.text(SettingsKey.FILE_DATES, word -> word(DateOrder.class, word)),
                rule.whole(SettingsKey.FILE_HEADER_LINE, 1, LAST_HEADER_LINE)
                        .map(line -> OptionalInt.of(line.intValue()))
                        .orElse(OptionalInt.empty()),
                rule.value(SettingsKey.FILE_TOTALS_ROW, found -> found instanceof Boolean b ? totals(b) : null),
                new ReadFileShape(rule).shape(),
                rule.text(SettingsKey.FILE_HOURS, word -> word(HoursUnit.class, word)),
                rule.table(SettingsKey.FILE_ENTRIES, ReadFileRules::span),
                pairs(rule, SettingsKey.FILE_COLUMNS),
                rule.table(SettingsKey.FILE_VALUES, ReadFileRules::values).orElse(List.of()),
                pairs(rule, SettingsKey.FILE_CONSTANTS),
                rule.place().line());
    }

    private static EntrySpan span(TomlTable table) {
        return table.keySet().equals(Set.of(SPAN)) && table.get(List.of(SPAN)) instanceof String text
                ? word(EntrySpan.class, text)
                : null;
    }

    static List<Pair> pairs(Section rule, SettingsKey key) {
        return rule.table(key, table -> pairs(key, table)).orElse(List.of());
    }

    private static List<Pair> pairs(SettingsKey key, TomlTable table) {
        List<Pair> pairs = new ArrayList<>();
        for (String name : table.keySet()) {
            TomlPosition place = table.inputPositionOf(List.of(name));
            Object found = table.get(List.of(name));
            if (!(found instanceof String text) || text.isBlank()) {
                throw Section.unusable(place, key.path() + "." + name, found, "text in quotes");
            }
            pairs.add(new Pair(name, text, place.line()));
        }
        return pairs;
    }

    /** Returns words by their column. */
    static List<ValueMap> values(TomlTable table) {
        List<ValueMap> maps = new ArrayList<>();
        for (String column : table.keySet()) {
            TomlPosition place = table.inputPositionOf(List.of(column));
            Object found = table.get(List.of(column));
            if (!(found instanceof TomlTable words)) {
                throw Section.unusable(
                        place, SettingsKey.FILE_VALUES.path(), found, SettingsKey.FILE_VALUES.expected());
            }
            maps.add(new ValueMap(column, pairs(SettingsKey.FILE_VALUES, words), place.line()));
        }
        return maps;
    }

    private static String name(String pattern) {
        return pattern.indexOf('/') < 0 && pattern.indexOf('\\') < 0 ? pattern.strip() : null;
    }

    private static Charset encoding(String name) {
        try {
            return Charset.forName(name.strip());
        } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
            return null;
        }
    }

    private static Character delimiter(String text) {
        Character mark = text.equals("tab") ? Character.valueOf('\t') : mark(text);
        return mark == null || mark == '"' ? null : mark;
    }

    private static Character quote(String text) {
        return text.equals("none") ? Character.valueOf(FileRule.NO_QUOTE) : mark(text);
    }

    private static Character mark(String text) {
        boolean usable = text.length() == 1 && text.charAt(0) < 0x7F && !Character.isLetterOrDigit(text.charAt(0));
        return usable ? Character.valueOf(text.charAt(0)) : null;
    }

    private static DecimalSign decimal(String text) {
        return Arrays.stream(DecimalSign.values())
                .filter(known -> text.equals(String.valueOf(known.sign())))
                .findFirst()
                .orElse(null);
    }

    private static TotalsRow totals(Boolean present) {
        return present ? TotalsRow.PRESENT : TotalsRow.ABSENT;
    }

    private static <E extends Enum<E>> E word(Class<E> kind, String word) {
        return Words.parse(kind, word).orElse(null);
    }
}
