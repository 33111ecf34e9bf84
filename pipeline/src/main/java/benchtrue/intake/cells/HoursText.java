package benchtrue.intake.cells;

import benchtrue.settings.DecimalSign;
import benchtrue.settings.HoursUnit;
import benchtrue.shop.Hours;
import java.math.BigDecimal;
import java.math.MathContext;
import java.text.Normalizer;
import java.time.Duration;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a duration as people write it: decimal hours, {@code 1:30}, {@code 1h30}, {@code 1.5 h}, {@code 90 min},
 * {@code 1 Std. 30 Min.}, {@code 1 1/2}, or ISO 8601 ({@code PT1H30M}).
 */
public final class HoursText {
    private static final String HOUR =
            " ?(?:h|hrs?|hours?|stdn?|stunden?|heures?|horas?|or[ae]|uur|uren|u|tim|timmar|timer?|godz|godzin[ay]?)\\.?";
    private static final String MINUTE = " ?(?:m|mn|mins?|minut[eoiay]?s?|minuten|minutter|['\u2032\u2019])\\.?";
    private static final Pattern LETTERED = Pattern.compile(
            "([-+]?)(\\d{1,5})" + HOUR + "(?:,? ?(?:(?:and|und|et|y|en?|och|og|i) )?([0-5]?\\d)(?:" + MINUTE + ")?)?");
    private static final Pattern MINUTES = Pattern.compile("(.*[\\d)])" + MINUTE);
    private static final Pattern UNIT = Pattern.compile("(.*[\\d)-])" + HOUR);
    private static final Pattern FRACTION = Pattern.compile("([-+]?)(?:(\\d{1,4})[ -])?([1-7])/([2348])");
    private static final Pattern ISO_HOURS = Pattern.compile("pt(\\d{1,5}\\.\\d{1,9})h");
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,12}(\\.\\d{0,12})?|\\.\\d{1,12})");
    private static final Pattern POINTED = Pattern.compile("([+-]?\\d{1,5})\\.([0-5]\\d|[1-4])");

    private HoursText() {}

    /** Returns hours as 1.5 or 1:30, or the text as it stands where it is neither. */
    public static String canonical(String text, Function<NumberText.Sign, DecimalSign> decimals) {
        String plain = plain(text);
        if (plain.indexOf(':') >= 0) {
            return without(UNIT, plain);
        }
        Matcher lettered = LETTERED.matcher(plain);
        if (lettered.matches()) {
            String minutes = lettered.group(3) == null ? "00" : lettered.group(3);
            return lettered.group(1) + lettered.group(2) + ":" + (minutes.length() == 1 ? "0" : "") + minutes;
        }
        if (plain.startsWith("pt")) {
            Matcher hours = ISO_HOURS.matcher(plain);
            return hours.matches() ? hours.group(1) : iso(text);
        }
        Matcher fraction = FRACTION.matcher(without(UNIT, plain));
        if (fraction.matches()) {
            return fraction(fraction, text);
        }
        Matcher minutes = MINUTES.matcher(plain);
        if (minutes.matches()) {
            String counted = NumberText.canonical(minutes.group(1), decimals);
            return NUMBER.matcher(counted).matches() ? counted(counted, HoursUnit.MINUTES) : text;
        }
        return NumberText.canonical(number(text), decimals);
    }

    /** Returns what a duration tells of its file's decimal sign. */
    public static NumberText.Sign tells(String text) {
        return text.indexOf(':') >= 0 ? NumberText.Sign.SILENT : NumberText.tells(number(text));
    }

    /** A figure without a unit stays as it is written, since an apostrophe may stand between its thousands. */
    private static String number(String text) {
        String plain = plain(text);
        String bare = without(UNIT, plain);
        bare = bare.equals(plain) ? without(MINUTES, plain) : bare;
        return bare.equals(plain) ? text : bare;
    }

    private static String without(Pattern unit, String plain) {
        Matcher found = unit.matcher(plain);
        return found.matches() ? found.group(1).strip() : plain;
    }

    /** Small letters, single spaces, and fractions of one sign (U+00BD) written out behind a space. */
    private static String plain(String text) {
        StringBuilder apart = new StringBuilder();
        text.codePoints()
                .forEach(letter -> apart.append(Character.getType(letter) == Character.OTHER_NUMBER ? " " : "")
                        .appendCodePoint(letter));
        return Normalizer.normalize(apart, Normalizer.Form.NFKC)
                .replace('\u2044', '/')
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\s+", " ")
                .strip();
    }

    private static String fraction(Matcher found, String text) {
        int over = Integer.parseInt(found.group(3));
        int under = Integer.parseInt(found.group(4));
        long whole = found.group(2) == null ? 0 : Long.parseLong(found.group(2));
        return over < under
                ? found.group(1).replace("+", "")
                        + ClockText.clock(Hours.SECONDS * whole + Hours.SECONDS * over / under)
                : text;
    }

    /**
     * Returns hours as h:mm:ss, in decimals where a second is broken.
     *
     * @param number plain, with a point
     * @param unit what it counts
     */
    public static String counted(String number, HoursUnit unit) {
        if (!NUMBER.matcher(number).matches() || unit == HoursUnit.HOURS) {
            return number;
        }
        if (unit == HoursUnit.HOURS_MINUTES) {
            return pointed(number);
        }
        BigDecimal seconds = new BigDecimal(number).multiply(BigDecimal.valueOf(Hours.SECONDS / unit.anHour()));
        if (seconds.stripTrailingZeros().scale() > 0) {
            return seconds.divide(BigDecimal.valueOf(Hours.SECONDS), new MathContext(18))
                    .toPlainString();
        }
        return (seconds.signum() < 0 ? "-" : "") + ClockText.clock(seconds.abs().longValue());
    }

    /** A lone 5 is half an hour or fifty minutes, and 75 are no minutes: neither is read. */
    private static String pointed(String number) {
        Matcher found = POINTED.matcher(number);
        if (found.matches()) {
            return found.group(1) + ":" + (found.group(2) + "0").substring(0, 2);
        }
        return number.indexOf('.') < 0 ? number : number.replace('.', 'h');
    }

    private static String iso(String text) {
        try {
            Duration duration = Duration.parse(text.strip());
            return duration.getNano() == 0 && !duration.isNegative() ? ClockText.clock(duration.getSeconds()) : text;
        } catch (DateTimeParseException noDuration) {
            return text;
        }
    }
}
