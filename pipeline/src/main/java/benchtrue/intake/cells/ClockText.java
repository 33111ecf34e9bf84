package benchtrue.intake.cells;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a time of day on a clock of 12 or 24 hours, alone or behind a date, or as a spreadsheet's part of a day. */
public final class ClockText {
    private static final Pattern BEHIND_DATE = Pattern.compile(".*\\d[T ]+(\\d{1,2}:\\d\\d.*)");
    private static final Pattern HALF_DAYS =
            Pattern.compile("(\\d{1,2})(?:[:.]([0-5]\\d))?(:[0-5]\\d)?(?:\\.\\d+)? ?([AaPp])\\.?[Mm]\\.?");
    private static final Pattern POINTED = Pattern.compile("([1-9]|[01]\\d|2[0-3])[.h]([0-5]\\d)");
    private static final Pattern FOUR_FIGURES = Pattern.compile("([01]\\d|2[0-3])([0-5]\\d)");
    private static final Pattern PART_OF_DAY = Pattern.compile("0?[.,](\\d{1,18})");
    private static final BigDecimal DAY = BigDecimal.valueOf(86_400);

    private ClockText() {}

    /** Returns the time as 14:05, or the text as it stands where it is none. */
    public static String canonical(String text) {
        String plain = text.strip();
        Matcher behind = BEHIND_DATE.matcher(plain);
        if (behind.matches()) {
            plain = behind.group(1).strip();
        }
        Matcher half = HALF_DAYS.matcher(plain);
        if (half.matches()) {
            return halfDay(half, text);
        }
        Matcher part = PART_OF_DAY.matcher(plain);
        if (part.matches() && !plain.matches("0[.,]\\d\\d")) {
            return clock(DAY.multiply(new BigDecimal("0." + part.group(1)))
                    .setScale(0, RoundingMode.HALF_EVEN)
                    .intValueExact());
        }
        for (Pattern form : new Pattern[] {POINTED, FOUR_FIGURES}) {
            Matcher found = form.matcher(plain);
            if (found.matches()) {
                return found.group(1) + ":" + found.group(2);
            }
        }
        return plain;
    }

    private static String halfDay(Matcher found, String text) {
        int hour = Integer.parseInt(found.group(1));
        if (hour < 1 || hour > 12) {
            return text;
        }
        int of24 = hour % 12 + (found.group(4).equalsIgnoreCase("p") ? 12 : 0);
        return of24 + ":" + (found.group(2) == null ? "00" : found.group(2))
                + (found.group(3) == null ? "" : found.group(3));
    }

    /** Returns seconds as 36:30, with seconds where there are any. */
    public static String clock(long seconds) {
        String minutes = seconds / 3_600 + ":" + two(seconds / 60 % 60);
        return seconds % 60 == 0 ? minutes : minutes + ":" + two(seconds % 60);
    }

    private static String two(long number) {
        return (number < 10 ? "0" : "") + number;
    }
}
