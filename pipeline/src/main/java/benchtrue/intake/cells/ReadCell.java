package benchtrue.intake.cells;

import benchtrue.intake.columns.Cell;
import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.Problem;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the canonical text of a cell; called once for each distinct text of a column. */
public final class ReadCell {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,18}(\\.\\d{0,18})?|\\.\\d{1,18})");
    private static final Pattern SPAN = Pattern.compile("([+-]?)(\\d{1,5}):([0-5]\\d)(:([0-5]\\d))?");
    private static final Pattern DAY = Pattern.compile("(\\d{4})-(\\d\\d)-(\\d\\d)");
    private static final Pattern MONTH = Pattern.compile("(\\d{4})-(\\d\\d)");
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;
    private static final long MOST_SECONDS = 100_000 * Hours.SECONDS;
    private static final long MOST_MONEY = 1_000_000_000 * Money.UNIT;
    private static final BigDecimal SECONDS_PER_HOUR = BigDecimal.valueOf(Hours.SECONDS);

    private ReadCell() {}

    /** Returns what a text says in a column; an empty text says nothing. */
    public static Reading read(Cell cell, String text) {
        String plain = text.strip();
        if (plain.isEmpty()) {
            return cell.need() == Need.REQUIRED ? Reading.bad(Problem.EMPTY) : Reading.NOTHING;
        }
        return switch (cell.kind()) {
            case TEXT, KEYS, WORDS, PASSED -> Reading.NOTHING;
            case WORD -> word(cell, plain);
            case DAY -> day(plain);
            case MONTH -> month(plain);
            case YEAR -> year(plain);
            case COUNT -> count(plain);
            case HOURS -> hours(plain).notNegative();
            case SIGNED_HOURS -> hours(plain);
            case CLOCK -> clock(plain);
            case MONEY -> decimal(plain).notNegative();
            case SIGNED_MONEY, QUANTITY -> decimal(plain);
        };
    }

    private static Reading word(Cell cell, String text) {
        int place = cell.words().indexOf(text.toLowerCase(Locale.ROOT));
        return place < 0 ? Reading.bad(Problem.UNREADABLE) : Reading.of(place);
    }

    private static Reading day(String text) {
        Matcher found = DAY.matcher(text);
        if (!found.matches()) {
            return Reading.bad(Problem.UNREADABLE);
        }
        try {
            LocalDate day = LocalDate.of(number(found, 1), number(found, 2), number(found, 3));
            return likely(day.getYear()) ? Reading.of(day.toEpochDay()) : Reading.bad(Problem.UNLIKELY_DAY);
        } catch (DateTimeException noSuchDay) {
            return Reading.bad(Problem.UNREADABLE);
        }
    }

    private static Reading month(String text) {
        Matcher found = MONTH.matcher(text);
        if (!found.matches() || number(found, 2) < 1 || number(found, 2) > 12) {
            return Reading.bad(Problem.UNREADABLE);
        }
        int year = number(found, 1);
        return likely(year) ? Reading.of(year * 12L + number(found, 2) - 1) : Reading.bad(Problem.UNLIKELY_DAY);
    }

    private static boolean likely(int year) {
        return year >= FIRST_YEAR && year <= LAST_YEAR;
    }

    private static int number(Matcher found, int group) {
        return Integer.parseInt(found.group(group));
    }

    private static Reading year(String text) {
        return text.matches("[12]\\d{3}") ? Reading.of(Integer.parseInt(text)) : Reading.bad(Problem.UNREADABLE);
    }

    private static Reading count(String text) {
        return text.matches("\\d{1,9}") ? Reading.of(Long.parseLong(text)) : Reading.bad(Problem.UNREADABLE);
    }

    private static Reading hours(String text) {
        Matcher span = SPAN.matcher(text);
        if (span.matches()) {
            long seconds = number(span, 2) * Hours.SECONDS + number(span, 3) * 60L;
            long all = seconds + (span.group(5) == null ? 0 : number(span, 5));
            return all > MOST_SECONDS
                    ? Reading.bad(Problem.TOO_LARGE)
                    : Reading.of(span.group(1).equals("-") ? -all : all);
        }
        return NUMBER.matcher(text).matches()
                ? Reading.rounded(new BigDecimal(text).multiply(SECONDS_PER_HOUR), MOST_SECONDS)
                : Reading.bad(Problem.UNREADABLE);
    }

    private static Reading clock(String text) {
        Matcher span = SPAN.matcher(text);
        if (!span.matches() || !span.group(1).isEmpty()) {
            return Reading.bad(Problem.UNREADABLE);
        }
        long seconds =
                number(span, 2) * Hours.SECONDS + number(span, 3) * 60L + (span.group(5) == null ? 0 : number(span, 5));
        return seconds > 24 * Hours.SECONDS ? Reading.bad(Problem.UNREADABLE) : Reading.of(seconds);
    }

    private static Reading decimal(String text) {
        return NUMBER.matcher(text).matches()
                ? Reading.rounded(new BigDecimal(text).movePointRight(4), MOST_MONEY)
                : Reading.bad(Problem.UNREADABLE);
    }
}
