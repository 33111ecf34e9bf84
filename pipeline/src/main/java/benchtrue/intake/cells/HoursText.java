package benchtrue.intake.cells;

import benchtrue.settings.DecimalSign;
import java.time.Duration;
import java.time.format.DateTimeParseException;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a duration: decimal hours, {@code 1:30}, {@code 1h30}, {@code 1.5 h}, or ISO 8601 ({@code PT1H30M}). */
public final class HoursText {
    private static final Pattern LETTERED =
            Pattern.compile("([-+]?)(\\d{1,5}) ?h(?:rs?|ours?)? ?(\\d{1,2})? ?(?:m|min)?\\.?");
    private static final Pattern UNIT =
            Pattern.compile("(?i)(.*[\\d)-]) ?(?:h|hrs?|hours?|std|stunden|heures?|horas?|uur)\\.?");

    private static final Pattern ISO_HOURS = Pattern.compile("PT(\\d{1,5}\\.\\d{1,9})H");

    private HoursText() {}

    /** Returns hours as 1.5 or 1:30, or the text as it stands where it is neither. */
    public static String canonical(String text, Function<NumberText.Sign, DecimalSign> decimals) {
        String plain = text.strip();
        if (plain.indexOf(':') >= 0) {
            return text;
        }
        Matcher lettered = LETTERED.matcher(plain);
        if (lettered.matches()) {
            String minutes = lettered.group(3) == null ? "00" : lettered.group(3);
            return lettered.group(1) + lettered.group(2) + ":" + (minutes.length() == 1 ? "0" : "") + minutes;
        }
        if (plain.startsWith("PT")) {
            Matcher hours = ISO_HOURS.matcher(plain);
            return hours.matches() ? hours.group(1) : iso(plain);
        }
        return NumberText.canonical(number(text), decimals);
    }

    /** Returns what a duration tells of its file's decimal sign. */
    public static NumberText.Sign tells(String text) {
        return text.indexOf(':') >= 0 ? NumberText.Sign.SILENT : NumberText.tells(number(text));
    }

    private static String number(String text) {
        Matcher unit = UNIT.matcher(text.strip());
        return unit.matches() ? unit.group(1) : text;
    }

    private static String iso(String text) {
        try {
            Duration duration = Duration.parse(text);
            return duration.getNano() == 0 && !duration.isNegative() ? ClockText.clock(duration.getSeconds()) : text;
        } catch (DateTimeParseException noDuration) {
            return text;
        }
    }
}
