package benchtrue.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** Reads one {@code [[breakdown]]} question; whatever can't be used is refused with its line and column. */
final class ReadBreakdowns {
    /** The section's name. */
    static final String SECTION = "breakdown";

    private static final long MOST_ROWS = 1_000;
    private final TomlTable question;
    private final TomlPosition place;

    private ReadBreakdowns(TomlTable question, TomlPosition place) {
        this.question = question;
        this.place = place;
    }

    /** Returns the questions in the file's order. */
    static List<AskedQuestion> read(TomlArray questions) {
        List<AskedQuestion> read = new ArrayList<>();
        for (int i = 0; i < questions.size(); i++) {
            TomlPosition place = questions.inputPositionOf(i);
            if (!(questions.get(i) instanceof TomlTable question)) {
                throw SettingsFile.refusal(place, "\"breakdown\" is a list, expected [[breakdown]] sections");
            }
            read.add(new ReadBreakdowns(question, place).question());
        }
        return read;
    }

    private AskedQuestion question() {
        List<String> known =
                Arrays.stream(BreakdownKey.values()).map(BreakdownKey::path).toList();
        SettingsFile.refuseUnknown(question, known, "[[" + SECTION + "]]");
        return new AskedQuestion(
                needed(BreakdownKey.TITLE, text(BreakdownKey.TITLE)),
                needed(BreakdownKey.BY, texts(BreakdownKey.BY)),
                text(BreakdownKey.ACROSS),
                texts(BreakdownKey.WHERE),
                text(BreakdownKey.FROM),
                text(BreakdownKey.TO),
                text(BreakdownKey.DATE),
                texts(BreakdownKey.SHOW),
                text(BreakdownKey.SORT),
                value(BreakdownKey.TOP, found -> found instanceof Long n && n >= 0 && n <= MOST_ROWS ? n : null)
                        .map(Long::intValue)
                        .orElse(0),
                value(BreakdownKey.PICTURE, found -> found instanceof Boolean is ? is : null)
                        .map(shown -> shown ? Disclosure.SHOWN : Disclosure.HIDDEN)
                        .orElse(Disclosure.HIDDEN),
                place.line());
    }

    private <T> T needed(BreakdownKey key, T found) {
        if (found.equals("") || found.equals(List.of())) {
            throw SettingsFile.refusal(
                    place, "[[" + SECTION + "]] without \"" + key.path() + "\", expected " + key.expected());
        }
        return found;
    }

    private String text(BreakdownKey key) {
        return value(key, found -> found instanceof String text && !text.isBlank() ? text.strip() : null)
                .orElse("");
    }

    private List<String> texts(BreakdownKey key) {
        return value(key, found -> found instanceof TomlArray list ? all(list) : null)
                .orElse(List.of());
    }

    private static List<String> all(TomlArray list) {
        boolean words = list.toList().stream().allMatch(word -> word instanceof String);
        return words ? list.toList().stream().map(Object::toString).toList() : null;
    }

    private <T> Optional<T> value(BreakdownKey key, Function<Object, T> reading) {
        Object found = question.get(List.of(key.path()));
        if (found == null) {
            return Optional.empty();
        }
        T read = reading.apply(found);
        if (read == null) {
            throw SettingsFile.unusable(
                    question.inputPositionOf(List.of(key.path())), SECTION + "." + key.path(), found, key.expected());
        }
        return Optional.of(read);
    }
}
