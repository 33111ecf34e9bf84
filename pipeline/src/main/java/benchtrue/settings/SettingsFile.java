package benchtrue.settings;

import benchtrue.format.Spelling;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** The values of one {@code shop.toml}; whatever can't be used is refused with its line and column. */
final class SettingsFile {
    private static final Set<String> SECTIONS = Arrays.stream(SettingsKey.values())
            .map(SettingsKey::parts)
            .filter(parts -> parts.size() > 1)
            .map(parts -> parts.get(0))
            .collect(Collectors.toCollection(TreeSet::new));

    private static final String NAME = ReadSettings.FILE;
    private final TomlParseResult values;

    private SettingsFile(TomlParseResult values) {
        this.values = values;
    }

    static SettingsFile parse(String text) {
        TomlParseResult values = Toml.parse(text);
        if (values.hasErrors()) {
            TomlParseError first = values.errors().get(0);
            throw refusal(
                    first.position(),
                    "not TOML: " + first.getMessage() + ". Write one key = value a line, text in double quotes");
        }
        SettingsFile file = new SettingsFile(values);
        file.refuseUnknownKeys();
        return file;
    }

    private void refuseUnknownKeys() {
        values.keyPathSet(true).stream()
                .filter(path -> !known(path))
                .min(Comparator.comparingInt((List<String> path) -> place(path).line())
                        .thenComparingInt(path -> place(path).column()))
                .ifPresent(path -> {
                    String name = String.join(".", path);
                    List<String> known = new ArrayList<>(Arrays.stream(SettingsKey.values())
                            .map(SettingsKey::path)
                            .toList());
                    known.addAll(SECTIONS);
                    throw refusal(place(path), "unknown key \"" + name + "\". " + advice(name, known));
                });
    }

    private boolean known(List<String> path) {
        boolean section = path.size() == 1 && SECTIONS.contains(path.get(0)) && values.isTable(path);
        boolean rules = (path.equals(List.of(ReadFileRules.SECTION)) || path.equals(List.of(ReadBreakdowns.SECTION)))
                && values.isArray(path);
        boolean families = path.size() >= ReadFamilies.SECTION.size()
                && path.subList(0, ReadFamilies.SECTION.size()).equals(ReadFamilies.SECTION)
                && values.isTable(ReadFamilies.SECTION);
        boolean words = path.get(0).equals(ReadFileRules.WORDS) && values.isTable(List.of(ReadFileRules.WORDS));
        return section
                || rules
                || families
                || words
                || Arrays.stream(SettingsKey.values())
                        .anyMatch(key -> key.parts().equals(path));
    }

    private TomlPosition place(List<String> path) {
        return values.inputPositionOf(path);
    }

    /** Refuses a key of a section of its own that is not one of the known ones. */
    static void refuseUnknown(TomlTable section, List<String> known, String name) {
        for (String key : section.keySet()) {
            if (!known.contains(key)) {
                throw refusal(
                        section.inputPositionOf(List.of(key)),
                        "unknown key \"" + key + "\" of " + name + ". " + advice(key, known));
            }
        }
    }

    private static String advice(String name, List<String> known) {
        return Spelling.nearest(name, known)
                .map(key -> "Did you mean \"" + key + "\"?")
                .orElse("Known keys: " + String.join(", ", known));
    }

    /** Returns a key's number, a whole number included, or what stands in its place where the file lacks it. */
    double number(SettingsKey key, double low, double high, double absent) {
        return value(key, absent, found -> number(found, low, high));
    }

    /** Returns a number within its limits, or null where something else was found. */
    static Double number(Object found, double low, double high) {
        if (found instanceof Long || found instanceof Double) {
            double number = ((Number) found).doubleValue();
            return number >= low && number <= high ? number : null;
        }
        return null;
    }

    /** Returns a key's amount in ten-thousandths; amounts finer than that are refused. */
    long amount(SettingsKey key, long low, long high, long absent) {
        return value(key, absent, found -> amount(found, low, high));
    }

    /** Returns an amount within its limits in ten-thousandths, or null where something else was found. */
    static Long amount(Object found, long low, long high) {
        if (found instanceof Long || found instanceof Double d && Double.isFinite(d)) {
            BigDecimal scaled = new BigDecimal(found.toString()).movePointRight(4);
            boolean inRange = scaled.compareTo(BigDecimal.valueOf(low)) >= 0
                    && scaled.compareTo(BigDecimal.valueOf(high)) <= 0
                    && scaled.stripTrailingZeros().scale() <= 0;
            return inRange ? scaled.longValueExact() : null;
        }
        return null;
    }

    long whole(SettingsKey key, long low, long high, long absent) {
        return value(key, absent, found -> found instanceof Long n && n >= low && n <= high ? n : null);
    }

    /** Returns what a key's text stands for; the reading returns null for text it does not know. */
    <T> T text(SettingsKey key, T absent, Function<String, T> reading) {
        return value(key, absent, found -> found instanceof String s ? reading.apply(s) : null);
    }

    Disclosure disclosure(SettingsKey key, Disclosure absent) {
        return value(
                key, absent, found -> found instanceof Boolean b ? (b ? Disclosure.SHOWN : Disclosure.HIDDEN) : null);
    }

    /** Returns the rules for files, in the file's order. */
    List<FileRule> files() {
        return ReadFileRules.read(values.getArrayOrEmpty(List.of(ReadFileRules.SECTION)));
    }

    /** Returns what words mean in whichever file they stand, by column. */
    List<ValueMap> words() {
        return ReadFileRules.values(values.getTableOrEmpty(List.of(ReadFileRules.WORDS)));
    }

    /** Returns the questions that every night answers, in the file's order. */
    List<AskedQuestion> breakdowns() {
        return ReadBreakdowns.read(values.getArrayOrEmpty(List.of(ReadBreakdowns.SECTION)));
    }

    /** Returns the families with values of their own, by name. */
    List<FamilyPolicy> families() {
        return ReadFamilies.read(values.getTableOrEmpty(ReadFamilies.SECTION));
    }

    private <T> T value(SettingsKey key, T absent, Function<Object, T> reading) {
        Object found = values.get(key.parts());
        if (found == null) {
            return absent;
        }
        T read = reading.apply(found);
        if (read == null) {
            throw unusable(place(key.parts()), key.path(), found, key.expected());
        }
        return read;
    }

    /** Returns why a value can't be used. */
    static Refusal unusable(TomlPosition position, String path, Object found, String expected) {
        String shown;
        if (found instanceof String s) {
            shown = "\"" + s + "\"";
        } else if (found instanceof TomlTable) {
            shown = "a section";
        } else if (found instanceof TomlArray) {
            shown = "a list";
        } else {
            shown = found.toString();
        }
        return refusal(position, "\"" + path + "\" is " + shown + ", expected " + expected);
    }

    /** Returns why something can't be used, with its place. */
    static Refusal refusal(TomlPosition position, String what) {
        String sentence = what.endsWith("?") ? what : what + ".";
        return new Refusal(
                ExitCode.SETTINGS,
                NAME + ", line " + position.line() + ", column " + position.column() + ": " + sentence);
    }
}
