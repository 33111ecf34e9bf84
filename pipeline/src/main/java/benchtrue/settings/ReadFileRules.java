package benchtrue.settings;

import benchtrue.format.Words;
import benchtrue.shop.Refusal;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.UnsupportedCharsetException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Reads one {@code [[files]]} rule; whatever can't be used is refused with its line and column. */
final class ReadFileRules {
    /** The section's name. */
    static final String SECTION = "files";

    /** The section of words that mean the same in every file. */
    static final String WORDS = "words";

    /** The key within the section of entries. */
    static final String SPAN = "span";

    private static final int LAST_HEADER_LINE = 10_000;
    private final TomlTable rule;
    private final TomlPosition place;

    private ReadFileRules(TomlTable rule, TomlPosition place) {
        this.rule = rule;
        this.place = place;
    }

    /** Returns the rules in the file's order. */
    static List<FileRule> read(TomlArray rules) {
        List<FileRule> read = new ArrayList<>();
        for (int i = 0; i < rules.size(); i++) {
            if (!(rules.get(i) instanceof TomlTable rule)) {
                throw SettingsFile.refusal(
                        rules.inputPositionOf(i), "\"files\" is a list, expected [[files]] sections");
            }
            read.add(new ReadFileRules(rule, rules.inputPositionOf(i)).rule());
        }
        return read;
    }

    private FileRule rule() {
        List<String> known = Arrays.stream(FileKey.values()).map(FileKey::path).toList();
        SettingsFile.refuseUnknown(rule, known, "[[" + SECTION + "]]");
        return new FileRule(
                needed(FileKey.NAME, ReadFileRules::name),
                needed(FileKey.TABLE, table -> table),
                text(FileKey.ENCODING, ReadFileRules::encoding),
                text(FileKey.DELIMITER, ReadFileRules::delimiter),
                text(FileKey.QUOTE, ReadFileRules::quote),
                text(FileKey.DECIMAL, ReadFileRules::decimal),
                text(FileKey.DATES, word -> word(DateOrder.class, word)),
                headerLine(),
                value(FileKey.TOTALS_ROW, found -> found instanceof Boolean b ? totals(b) : null),
                new ReadFileShape(rule).shape(),
                text(FileKey.HOURS, word -> word(HoursUnit.class, word)),
                span(),
                pairs(FileKey.COLUMNS),
                values(),
                pairs(FileKey.CONSTANTS),
                place.line());
    }

    private <T> T needed(FileKey key, Function<String, T> reading) {
        return text(key, reading)
                .orElseThrow(() -> SettingsFile.refusal(
                        place, "[[files]] without \"" + key.path() + "\", expected " + key.expected()));
    }

    /** Returns what a key's text stands for; the reading returns null for text it does not know. */
    private <T> Optional<T> text(FileKey key, Function<String, T> reading) {
        return value(key, found -> found instanceof String s && !s.isBlank() ? reading.apply(s) : null);
    }

    private <T> Optional<T> value(FileKey key, Function<Object, T> reading) {
        Object found = rule.get(List.of(key.path()));
        if (found == null) {
            return Optional.empty();
        }
        T read = reading.apply(found);
        if (read == null) {
            throw unusable(key, rule.inputPositionOf(List.of(key.path())), found);
        }
        return Optional.of(read);
    }

    static Refusal unusable(FileKey key, TomlPosition place, Object found) {
        return SettingsFile.unusable(place, SECTION + "." + key.path(), found, key.expected());
    }

    private Optional<EntrySpan> span() {
        return value(
                FileKey.ENTRIES,
                found -> found instanceof TomlTable table
                                && table.keySet().equals(Set.of(SPAN))
                                && table.get(List.of(SPAN)) instanceof String text
                        ? word(EntrySpan.class, text)
                        : null);
    }

    private OptionalInt headerLine() {
        return value(
                        FileKey.HEADER_LINE,
                        found -> found instanceof Long n && n >= 1 && n <= LAST_HEADER_LINE ? n : null)
                .map(line -> OptionalInt.of(line.intValue()))
                .orElse(OptionalInt.empty());
    }

    private List<Pair> pairs(FileKey key) {
        return value(key, found -> found instanceof TomlTable table ? pairs(key, table) : null)
                .orElse(List.of());
    }

    static List<Pair> pairs(FileKey key, TomlTable table) {
        List<Pair> pairs = new ArrayList<>();
        for (String name : table.keySet()) {
            TomlPosition place = table.inputPositionOf(List.of(name));
            if (!(table.get(List.of(name)) instanceof String text) || text.isBlank()) {
                throw SettingsFile.unusable(
                        place, SECTION + "." + key.path() + "." + name, table.get(List.of(name)), "text in quotes");
            }
            pairs.add(new Pair(name, text, place.line()));
        }
        return pairs;
    }

    private List<ValueMap> values() {
        return value(FileKey.VALUES, found -> found instanceof TomlTable table ? values(table) : null)
                .orElse(List.of());
    }

    /** Returns words by their column. */
    static List<ValueMap> values(TomlTable table) {
        List<ValueMap> maps = new ArrayList<>();
        for (String column : table.keySet()) {
            TomlPosition place = table.inputPositionOf(List.of(column));
            if (!(table.get(List.of(column)) instanceof TomlTable words)) {
                throw unusable(FileKey.VALUES, place, table.get(List.of(column)));
            }
            maps.add(new ValueMap(column, pairs(FileKey.VALUES, words), place.line()));
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
