package benchtrue.settings;

import benchtrue.format.Spelling;
import benchtrue.format.Words;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;

/** Reads how the table of one {@code [[files]]} rule lies in its files. */
final class ReadFileShape {
    private final TomlTable rule;

    ReadFileShape(TomlTable rule) {
        this.rule = rule;
    }

    FileShape shape() {
        return new FileShape(
                read(rule, FileKey.SHEET, FileKey.SHEET.path(), ReadFileShape::texts)
                        .orElse(List.of()),
                read(rule, FileKey.EFFECTIVE, FileKey.EFFECTIVE.path(), ReadFileShape::day),
                read(rule, FileKey.FILL_DOWN, FileKey.FILL_DOWN.path(), ReadFileShape::texts)
                        .orElse(List.of()),
                patterns(),
                unpivot());
    }

    /** Returns what stands under a key of a table; the reading returns null for what can't be used. */
    private static <T> Optional<T> read(TomlTable table, FileKey key, String path, Function<Object, T> reading) {
        Object found = table.get(List.of(path));
        if (found == null) {
            return Optional.empty();
        }
        T read = reading.apply(found);
        if (read == null) {
            throw ReadFileRules.unusable(key, table.inputPositionOf(List.of(path)), found);
        }
        return Optional.of(read);
    }

    /** Returns a text or a list of texts as a list, null where it is neither. */
    private static List<String> texts(Object found) {
        List<String> texts = new ArrayList<>();
        for (Object text : found instanceof TomlArray list ? list.toList() : List.of(found)) {
            if (!(text instanceof String plain) || plain.isBlank()) {
                return null;
            }
            texts.add(plain.strip());
        }
        return texts.isEmpty() ? null : texts;
    }

    private static String text(Object found) {
        return found instanceof String text && !text.isBlank() ? text.strip() : null;
    }

    private static LocalDate day(Object found) {
        try {
            return LocalDate.parse(String.valueOf(found));
        } catch (DateTimeParseException noDay) {
            return null;
        }
    }

    private List<Pair> patterns() {
        List<Pair> patterns = read(
                        rule,
                        FileKey.PATTERNS,
                        FileKey.PATTERNS.path(),
                        found -> found instanceof TomlTable table ? ReadFileRules.pairs(FileKey.PATTERNS, table) : null)
                .orElse(List.of());
        for (Pair pattern : patterns) {
            if (groups(pattern.text()) != 1) {
                throw SettingsFile.unusable(
                        rule.getTable(FileKey.PATTERNS.path()).inputPositionOf(List.of(pattern.key())),
                        ReadFileRules.SECTION + "." + FileKey.PATTERNS.path() + "." + pattern.key(),
                        pattern.text(),
                        "a pattern with one group in round brackets, such as '(\\d+)'");
            }
        }
        return patterns;
    }

    private static int groups(String pattern) {
        try {
            return Pattern.compile(pattern).matcher("").groupCount();
        } catch (PatternSyntaxException broken) {
            return -1;
        }
    }

    private Optional<Unpivot> unpivot() {
        return read(
                rule,
                FileKey.UNPIVOT,
                FileKey.UNPIVOT.path(),
                found -> found instanceof TomlTable table ? unpivot(table) : null);
    }

    private Unpivot unpivot(TomlTable table) {
        List<String> known =
                Arrays.stream(UnpivotKey.values()).map(UnpivotKey::path).toList();
        for (String key : table.keySet()) {
            if (!known.contains(key)) {
                throw SettingsFile.refusal(
                        table.inputPositionOf(List.of(key)),
                        "unknown key \"" + key + "\" of [files.unpivot]. "
                                + Spelling.nearest(key, known)
                                        .map(near -> "Did you mean \"" + near + "\"?")
                                        .orElse("Known keys: " + String.join(", ", known)));
            }
        }
        Optional<UnpivotHeader> header = unpivot(table, UnpivotKey.HEADER, ReadFileShape::header);
        if (header.isEmpty()) {
            throw ReadFileRules.unusable(
                    FileKey.UNPIVOT, rule.inputPositionOf(List.of(FileKey.UNPIVOT.path())), "it without header");
        }
        return new Unpivot(
                unpivot(table, UnpivotKey.COLUMNS, ReadFileShape::texts).orElse(List.of()),
                header.get(),
                unpivot(table, UnpivotKey.AFTER, ReadFileShape::text),
                unpivot(table, UnpivotKey.BEFORE, ReadFileShape::text),
                rule.inputPositionOf(List.of(FileKey.UNPIVOT.path())).line());
    }

    private static <T> Optional<T> unpivot(TomlTable table, UnpivotKey key, Function<Object, T> reading) {
        return read(table, FileKey.UNPIVOT, key.path(), reading);
    }

    private static UnpivotHeader header(Object found) {
        return found instanceof String word
                ? Words.parse(UnpivotHeader.class, word).orElse(null)
                : null;
    }
}
