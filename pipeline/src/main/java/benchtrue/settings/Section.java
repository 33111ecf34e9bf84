package benchtrue.settings;

import benchtrue.format.Spelling;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * A section of {@code shop.toml}; what can't be used is refused with its line and column. A reading of a value returns null for
 * what it can't use.
 *
 * @param table what stands in it
 * @param path its name, sections around it before a point; empty for the whole file
 * @param place where it begins
 */
record Section(TomlTable table, String path, TomlPosition place) {
    /** Returns the sections of a list, in the file's order, after a look at their keys. */
    static List<Section> list(TomlArray list, String path) {
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            TomlPosition place = list.inputPositionOf(i);
            if (!(list.get(i) instanceof TomlTable table)) {
                throw refusal(place, "\"" + path + "\" is a list, expected [[" + path + "]] sections");
            }
            Section section = new Section(table, path, place);
            section.refuseUnknown(keys(path), "[[" + path + "]]");
            sections.add(section);
        }
        return sections;
    }

    /** Returns the keys that a section may have. */
    static List<String> keys(String path) {
        return Arrays.stream(SettingsKey.values())
                .filter(key -> key.section().equals(path))
                .map(SettingsKey::within)
                .toList();
    }

    void refuseUnknown(List<String> known, String name) {
        for (String key : table.keySet()) {
            if (!known.contains(key)) {
                throw refusal(placeOf(key), "unknown key \"" + key + "\" of " + name + ". " + advice(key, known));
            }
        }
    }

    static String advice(String name, List<String> known) {
        return Spelling.nearest(name, known)
                .map(key -> "Did you mean \"" + key + "\"?")
                .orElse("Known keys: " + String.join(", ", known));
    }

    TomlPosition placeOf(String key) {
        return table.inputPositionOf(List.of(key));
    }

    <T> Optional<T> value(SettingsKey key, Function<Object, T> reading) {
        String path = this.path.isEmpty() ? key.within() : this.path + "." + key.within();
        return value(key.within(), path, key.expected(), reading);
    }

    /** Returns what a key holds that messages call by another path. */
    <T> Optional<T> value(String key, String path, String expected, Function<Object, T> reading) {
        Object found = table.get(List.of(key));
        if (found == null) {
            return Optional.empty();
        }
        T read = reading.apply(found);
        if (read == null) {
            throw unusable(placeOf(key), path, found, expected);
        }
        return Optional.of(read);
    }

    <T> Optional<T> text(SettingsKey key, Function<String, T> reading) {
        return value(key, found -> found instanceof String s && !s.isBlank() ? reading.apply(s) : null);
    }

    <T> Optional<T> table(SettingsKey key, Function<TomlTable, T> reading) {
        return value(key, found -> found instanceof TomlTable inner ? reading.apply(inner) : null);
    }

    /** Returns a number, a whole one included. */
    Optional<Double> number(SettingsKey key, double low, double high) {
        return value(key, found -> {
            boolean number = found instanceof Long || found instanceof Double;
            double value = number ? ((Number) found).doubleValue() : Double.NaN;
            return value >= low && value <= high ? value : null;
        });
    }

    /** Returns an amount in ten-thousandths; amounts finer than that are refused. */
    Optional<Long> amount(SettingsKey key, long low, long high) {
        return value(key, found -> {
            if (found instanceof Long || found instanceof Double d && Double.isFinite(d)) {
                BigDecimal scaled = new BigDecimal(found.toString()).movePointRight(4);
                boolean inRange = scaled.compareTo(BigDecimal.valueOf(low)) >= 0
                        && scaled.compareTo(BigDecimal.valueOf(high)) <= 0
                        && scaled.stripTrailingZeros().scale() <= 0;
                return inRange ? scaled.longValueExact() : null;
            }
            return null;
        });
    }

    Optional<Long> whole(SettingsKey key, long low, long high) {
        return value(key, found -> found instanceof Long n && n >= low && n <= high ? n : null);
    }

    Optional<Disclosure> disclosure(SettingsKey key) {
        return value(key, found -> found instanceof Boolean b ? (b ? Disclosure.SHOWN : Disclosure.HIDDEN) : null);
    }

    /** Returns what a key must hold. */
    <T> T needed(SettingsKey key, Optional<T> found) {
        return found.orElseThrow(
                () -> refusal(place, "[[" + path + "]] without \"" + key.within() + "\", expected " + key.expected()));
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
                ReadSettings.FILE + ", line " + position.line() + ", column " + position.column() + ": " + sentence);
    }
}
