package benchtrue.settings;

import java.util.List;
import java.util.Optional;
import org.tomlj.TomlArray;

/** Reads the {@code [[breakdown]]} questions. */
final class ReadBreakdowns {
    /** The section's name. */
    static final String SECTION = "breakdown";

    private static final long MOST_ROWS = 1_000;

    private ReadBreakdowns() {}

    /** Returns the questions in the file's order. */
    static List<AskedQuestion> read(TomlArray questions) {
        return Section.list(questions, SECTION).stream()
                .map(ReadBreakdowns::question)
                .toList();
    }

    private static AskedQuestion question(Section asked) {
        return new AskedQuestion(
                asked.needed(
                        SettingsKey.BREAKDOWN_TITLE,
                        Optional.of(text(asked, SettingsKey.BREAKDOWN_TITLE)).filter(title -> !title.isEmpty())),
                asked.needed(
                        SettingsKey.BREAKDOWN_BY,
                        Optional.of(texts(asked, SettingsKey.BREAKDOWN_BY)).filter(names -> !names.isEmpty())),
                text(asked, SettingsKey.BREAKDOWN_ACROSS),
                texts(asked, SettingsKey.BREAKDOWN_WHERE),
                text(asked, SettingsKey.BREAKDOWN_FROM),
                text(asked, SettingsKey.BREAKDOWN_TO),
                text(asked, SettingsKey.BREAKDOWN_DATE),
                texts(asked, SettingsKey.BREAKDOWN_SHOW),
                text(asked, SettingsKey.BREAKDOWN_SORT),
                asked.whole(SettingsKey.BREAKDOWN_TOP, 0, MOST_ROWS).orElse(0L).intValue(),
                asked.disclosure(SettingsKey.BREAKDOWN_PICTURE).orElse(Disclosure.HIDDEN),
                asked.place().line());
    }

    private static String text(Section asked, SettingsKey key) {
        return asked.text(key, String::strip).orElse("");
    }

    private static List<String> texts(Section asked, SettingsKey key) {
        return asked.value(key, found -> found instanceof TomlArray list ? all(list) : null)
                .orElse(List.of());
    }

    private static List<String> all(TomlArray list) {
        boolean words = list.toList().stream().allMatch(word -> word instanceof String);
        return words ? list.toList().stream().map(Object::toString).toList() : null;
    }
}
