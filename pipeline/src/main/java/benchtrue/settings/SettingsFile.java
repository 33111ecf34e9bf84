package benchtrue.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;

/** One {@code shop.toml}, of which every key is known. */
final class SettingsFile {
    private static final List<String> SECTIONS = List.of("money", "policy");
    private final TomlParseResult values;

    private SettingsFile(TomlParseResult values) {
        this.values = values;
    }

    static SettingsFile parse(String text) {
        TomlParseResult values = Toml.parse(text);
        if (values.hasErrors()) {
            TomlParseError first = values.errors().get(0);
            throw Section.refusal(
                    first.position(),
                    "not TOML: " + first.getMessage() + ". Write one key = value a line, text in double quotes");
        }
        SettingsFile file = new SettingsFile(values);
        file.refuseUnknownKeys();
        return file;
    }

    private void refuseUnknownKeys() {
        List<String> known = new ArrayList<>(Arrays.stream(SettingsKey.values())
                .filter(SettingsKey::single)
                .map(SettingsKey::path)
                .toList());
        known.addAll(SECTIONS);
        values.keyPathSet(true).stream()
                .filter(path -> !known(path, known))
                .min(Comparator.comparingInt((List<String> path) -> place(path).line())
                        .thenComparingInt(path -> place(path).column()))
                .ifPresent(path -> {
                    String name = String.join(".", path);
                    throw Section.refusal(place(path), "unknown key \"" + name + "\". " + Section.advice(name, known));
                });
    }

    private boolean known(List<String> path, List<String> keys) {
        boolean list = path.equals(List.of(ReadFileRules.SECTION)) || path.equals(List.of(ReadBreakdowns.SECTION));
        boolean families = path.size() >= ReadFamilies.SECTION.size()
                && path.subList(0, ReadFamilies.SECTION.size()).equals(ReadFamilies.SECTION)
                && values.isTable(ReadFamilies.SECTION);
        boolean words = path.get(0).equals(ReadFileRules.WORDS) && values.isTable(List.of(ReadFileRules.WORDS));
        boolean key = path.size() == 1 && SECTIONS.contains(path.get(0))
                ? values.isTable(path)
                : keys.contains(String.join(".", path));
        return key || list && values.isArray(path) || families || words;
    }

    private TomlPosition place(List<String> path) {
        return values.inputPositionOf(path);
    }

    /** Returns a section of which there is one; empty for the top of the file. */
    Section section(String name) {
        return name.isEmpty()
                ? new Section(values, name, TomlPosition.positionAt(1, 1))
                : new Section(values.getTableOrEmpty(List.of(name)), name, TomlPosition.positionAt(1, 1));
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
}
