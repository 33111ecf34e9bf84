package benchtrue.breakdown;

import benchtrue.format.Spelling;
import benchtrue.settings.AskedQuestion;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;

/** Says what of a question can't be meant, where it stands, what was expected and which known name is nearest. */
final class Misunderstood {
    private final AskedQuestion asked;

    Misunderstood(AskedQuestion asked) {
        this.asked = asked;
    }

    Refusal unknown(String part, String found, List<String> known) {
        return because(part + ": found \"" + found + "\". "
                + Spelling.nearest(found, known)
                        .map(near -> "Did you mean \"" + near + "\"?")
                        .orElse("Known names: " + String.join(", ", known) + "."));
    }

    Refusal found(String part, String found, String expected) {
        return because(part + ": found " + found + ", expected " + expected + ".");
    }

    /** Returns a day that a part of the question names, in days since 1970-01-01. */
    int day(String part, String text) {
        try {
            return (int) LocalDate.parse(text.strip()).toEpochDay();
        } catch (DateTimeParseException e) {
            String back = part.equals("from") ? ", or how far back, such as \"12 months\"" : "";
            throw found(part, "\"" + text + "\"", "a day such as 2026-03-01" + back);
        }
    }

    Refusal because(String words) {
        return asked.line() > 0
                ? new Refusal(
                        ExitCode.SETTINGS,
                        ReadSettings.FILE + ", line " + asked.line() + ", [[breakdown]] \"" + asked.title() + "\": "
                                + words)
                : new Refusal(ExitCode.USAGE, words);
    }
}
