package benchtrue.settings;

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
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Reads how the table of one {@code [[files]]} rule lies in its files. */
final class ReadFileShape {
    private final Section rule;

    ReadFileShape(Section rule) {
        this.rule = rule;
    }

    FileShape shape() {
        return new FileShape(
                rule.value(SettingsKey.FILE_SHEET, ReadFileShape::texts).orElse(List.of()),
                rule.value(SettingsKey.FILE_EFFECTIVE, ReadFileShape::day),
                rule.value(SettingsKey.FILE_FILL_DOWN, ReadFileShape::texts).orElse(List.of()),
                patterns(),
                rule.table(SettingsKey.FILE_UNPIVOT, this::unpivot));
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
        List<Pair> patterns = ReadFileRules.pairs(rule, SettingsKey.FILE_PATTERNS);
        for (Pair pattern : patterns) {
            if (groups(pattern.text()) != 1) {
                throw Section.unusable(
                        rule.table()
                                .getTable(SettingsKey.FILE_PATTERNS.within())
                                .inputPositionOf(List.of(pattern.key())),
                        SettingsKey.FILE_PATTERNS.path() + "." + pattern.key(),
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

    private Unpivot unpivot(TomlTable table) {
        TomlPosition place = rule.placeOf(SettingsKey.FILE_UNPIVOT.within());
        Section unpivot = new Section(table, SettingsKey.FILE_UNPIVOT.path(), place);
        List<String> known =
                Arrays.stream(UnpivotKey.values()).map(UnpivotKey::path).toList();
        unpivot.refuseUnknown(known, "[" + unpivot.path() + "]");
        UnpivotHeader header = read(unpivot, UnpivotKey.HEADER, ReadFileShape::header)
                .orElseThrow(() -> Section.unusable(
                        place, unpivot.path(), "it without header", SettingsKey.FILE_UNPIVOT.expected()));
        return new Unpivot(
                read(unpivot, UnpivotKey.COLUMNS, ReadFileShape::texts).orElse(List.of()),
                header,
                read(unpivot, UnpivotKey.AFTER, ReadFileShape::text),
                read(unpivot, UnpivotKey.BEFORE, ReadFileShape::text),
                place.line());
    }

    private static <T> Optional<T> read(Section unpivot, UnpivotKey key, Function<Object, T> reading) {
        return unpivot.value(key.path(), unpivot.path(), SettingsKey.FILE_UNPIVOT.expected(), reading);
    }

    private static UnpivotHeader header(Object found) {
        return found instanceof String word
                ? Words.parse(UnpivotHeader.class, word).orElse(null)
                : null;
    }
}
