package benchtrue.settings;

import benchtrue.format.Words;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.Function;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Reads the {@code [policy.family.NAME]} sections, each key with its place where it can't be used. */
final class ReadFamilies {
    /** The section that holds one section a family. */
    static final List<String> SECTION = List.of("policy", "family");

    private final String family;
    private final TomlTable section;
    private final TomlPosition place;

    private ReadFamilies(String family, TomlTable section, TomlPosition place) {
        this.family = family;
        this.section = section;
        this.place = place;
    }

    /** Returns the families in the order of their names. */
    static List<FamilyPolicy> read(TomlTable families) {
        List<FamilyPolicy> read = new ArrayList<>();
        for (String family : new TreeSet<>(families.keySet())) {
            TomlPosition place = families.inputPositionOf(List.of(family));
            if (!(families.get(List.of(family)) instanceof TomlTable section)) {
                throw SettingsFile.unusable(
                        place,
                        path(family),
                        families.get(List.of(family)),
                        "a section of its own for each family: [" + path("NAME") + "]");
            }
            read.add(new ReadFamilies(family, section, place).policy());
        }
        return read;
    }

    private static String path(String family) {
        return String.join(".", SECTION) + "." + family;
    }

    private FamilyPolicy policy() {
        List<String> known =
                Arrays.stream(FamilyKey.values()).map(FamilyKey::path).toList();
        SettingsFile.refuseUnknown(section, known, "[" + path(family) + "]");
        return new FamilyPolicy(
                family,
                value(
                        FamilyKey.RULE,
                        found -> found instanceof String word
                                ? Words.parse(Policy.Rule.class, word).orElse(null)
                                : null),
                value(
                                FamilyKey.COVERAGE,
                                found -> SettingsFile.number(found, Policy.LEAST_COVERAGE, Policy.MOST_COVERAGE))
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty()),
                amount(FamilyKey.RATE, 1, ReadSettings.MILLION),
                amount(FamilyKey.PRICE_ROUNDING, Policy.LEAST_ROUNDING, Policy.MOST_ROUNDING),
                place.line());
    }

    private long amount(FamilyKey key, long low, long high) {
        return value(key, found -> SettingsFile.amount(found, low, high)).orElse(Absent.AMOUNT);
    }

    /** Returns what a key holds; the reading returns null for what can't be used. */
    private <T> Optional<T> value(FamilyKey key, Function<Object, T> reading) {
        Object found = section.get(List.of(key.path()));
        if (found == null) {
            return Optional.empty();
        }
        T read = reading.apply(found);
        if (read == null) {
            throw SettingsFile.unusable(
                    section.inputPositionOf(List.of(key.path())),
                    path(family) + "." + key.path(),
                    found,
                    key.expected());
        }
        return Optional.of(read);
    }
}
