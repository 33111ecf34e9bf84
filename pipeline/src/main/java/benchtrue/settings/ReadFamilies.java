package benchtrue.settings;

import benchtrue.format.Words;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Reads the {@code [policy.family.NAME]} sections, each key with its place where it can't be used. */
final class ReadFamilies {
    /** The section that holds one section a family. */
    static final List<String> SECTION = List.of("policy", "family");

    private ReadFamilies() {}

    /** Returns the families in the order of their names. */
    static List<FamilyPolicy> read(TomlTable families) {
        List<FamilyPolicy> read = new ArrayList<>();
        for (String family : new TreeSet<>(families.keySet())) {
            TomlPosition place = families.inputPositionOf(List.of(family));
            Object found = families.get(List.of(family));
            if (!(found instanceof TomlTable table)) {
                throw Section.unusable(
                        place, path(family), found, "a section of its own for each family: [" + path("NAME") + "]");
            }
            read.add(policy(family, new Section(table, path(family), place)));
        }
        return read;
    }

    private static String path(String family) {
        return String.join(".", SECTION) + "." + family;
    }

    private static FamilyPolicy policy(String family, Section section) {
        section.refuseUnknown(Section.keys(path("NAME")), "[" + path(family) + "]");
        return new FamilyPolicy(
                family,
                section.text(
                        SettingsKey.FAMILY_RULE,
                        word -> Words.parse(Policy.Rule.class, word).orElse(null)),
                section.number(SettingsKey.FAMILY_COVERAGE, Policy.LEAST_COVERAGE, Policy.MOST_COVERAGE)
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty()),
                section.amount(SettingsKey.FAMILY_RATE, 1, ReadSettings.MILLION).orElse(Absent.AMOUNT),
                section.amount(SettingsKey.FAMILY_PRICE_ROUNDING, Policy.LEAST_ROUNDING, Policy.MOST_ROUNDING)
                        .orElse(Absent.AMOUNT),
                section.place().line());
    }
}
