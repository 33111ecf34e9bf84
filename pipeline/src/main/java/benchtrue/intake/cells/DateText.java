package benchtrue.intake.cells;

import benchtrue.settings.DateOrder;
import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a date as shops' systems write it: in figures of any order, with the month's name, or as a spreadsheet's serial. */
public final class DateText {
    private static final String TIME = "(?:[T ]+\\d{1,2}:\\d\\d(?::\\d\\d(?:[.,]\\d+)?)?(?: ?[AaPp]\\.?[Mm]\\.?)?)?";
    private static final Pattern FIGURES =
            Pattern.compile("(\\d{1,4}) ?([./-]) ?(\\d{1,2}) ?\\2 ?(\\d{4}|\\d{1,2})" + TIME);
    private static final Pattern DAY_THEN_NAME =
            Pattern.compile("(\\d{1,2})[. /-]{1,2}(\\p{L}{3,10})\\.?[, /-]{1,2}(\\d{4}|\\d{2})" + TIME);
    private static final Pattern NAME_THEN_DAY =
            Pattern.compile("(\\p{L}{3,10})\\.? (\\d{1,2})(?:st|nd|rd|th)?,? (\\d{4}|\\d{2})" + TIME);
    private static final Pattern RUN_TOGETHER = Pattern.compile("((?:19|20|21)\\d\\d)(\\d\\d)(\\d\\d)");
    private static final Pattern WEEK = Pattern.compile("(\\d{4})-?W(\\d\\d)(?:-?([1-7]))?");
    private static final Pattern SERIAL = Pattern.compile("(\\d{5})(?:[.,]\\d{1,12})?");

    /** Serials of 1954 to 2119, within which a bare number in a column of dates can only be one. */
    private static final int FIRST_SERIAL = 20_000;

    private static final int LAST_SERIAL = 80_000;

    /** POSIX {@code strptime}, conversion {@code %y}: 69 to 99 are of the twentieth century. */
    private static final int FIRST_OF_LAST_CENTURY = 69;

    private DateText() {}

    /** What figures separated by slashes or hyphens tell of the order they stand in. */
    public enum Order {
        DAY_FIRST,
        MONTH_FIRST,
        /** Both readings are dates, and different ones. */
        OPEN,
        /** No date in figures, one with the year first or points, or one that is the same either way. */
        SILENT
    }

    /** Returns what a text tells of the order in which the file writes dates. */
    public static Order tells(String text) {
        Matcher found = FIGURES.matcher(text.strip());
        if (!found.matches() || found.group(1).length() > 2 || found.group(2).equals(".")) {
            return Order.SILENT;
        }
        int first = Integer.parseInt(found.group(1));
        int second = Integer.parseInt(found.group(3));
        int year = fullYear(found.group(4));
        boolean dayFirst = day(year, second, first).isPresent();
        boolean monthFirst = day(year, first, second).isPresent();
        if (dayFirst == monthFirst) {
            return dayFirst && first != second ? Order.OPEN : Order.SILENT;
        }
        return dayFirst ? Order.DAY_FIRST : Order.MONTH_FIRST;
    }

    /** Returns the date as 2026-03-09, or the text as it stands where it is no date; the order is asked only where it matters. */
    public static String canonical(String text, Supplier<DateOrder> order, DateSystem serials) {
        return read(text.strip(), order, serials).map(LocalDate::toString).orElse(text);
    }

    /** Returns the date that a text says in a given order. */
    public static Optional<LocalDate> read(String text, Supplier<DateOrder> order, DateSystem serials) {
        Matcher found = FIGURES.matcher(text);
        if (found.matches()) {
            return figures(found, order);
        }
        found = DAY_THEN_NAME.matcher(text);
        if (found.matches()) {
            return named(found.group(3), found.group(2), found.group(1));
        }
        found = NAME_THEN_DAY.matcher(text);
        if (found.matches()) {
            return named(found.group(3), found.group(1), found.group(2));
        }
        found = RUN_TOGETHER.matcher(text);
        if (found.matches()) {
            return day(number(found.group(1)), number(found.group(2)), number(found.group(3)));
        }
        found = WEEK.matcher(text);
        if (found.matches()) {
            return week(found);
        }
        found = SERIAL.matcher(text);
        boolean isSerial =
                found.matches() && number(found.group(1)) >= FIRST_SERIAL && number(found.group(1)) <= LAST_SERIAL;
        return isSerial ? Optional.of(SerialDate.of(number(found.group(1)), serials)) : Optional.empty();
    }

    private static Optional<LocalDate> figures(Matcher found, Supplier<DateOrder> order) {
        int first = number(found.group(1));
        int second = number(found.group(3));
        if (found.group(1).length() == 4) {
            return day(first, second, number(found.group(4)));
        }
        if (found.group(1).length() == 3) {
            return Optional.empty();
        }
        int third = fullYear(found.group(4));
        if (found.group(2).equals(".")) {
            return day(third, second, first);
        }
        if (first == second) {
            return day(third, second, first);
        }
        return switch (order.get()) {
            case DAY_MONTH_YEAR -> day(third, second, first);
            case MONTH_DAY_YEAR -> day(third, first, second);
            case YEAR_MONTH_DAY ->
                found.group(4).length() == 4
                        ? Optional.empty()
                        : day(fullYear(found.group(1)), second, number(found.group(4)));
        };
    }

    private static Optional<LocalDate> named(String year, String name, String day) {
        int month = month(name);
        return month == 0 ? Optional.empty() : day(fullYear(year), month, number(day));
    }

    /** A week (ISO 8601) without a day stands for its Monday. */
    private static Optional<LocalDate> week(Matcher found) {
        String text = found.group(1) + "-W" + found.group(2) + "-" + (found.group(3) == null ? "1" : found.group(3));
        try {
            return Optional.of(LocalDate.parse(text, DateTimeFormatter.ISO_WEEK_DATE));
        } catch (DateTimeParseException noSuchWeek) {
            return Optional.empty();
        }
    }

    private static int number(String digits) {
        return Integer.parseInt(digits);
    }

    static int fullYear(String digits) {
        int year = number(digits);
        return digits.length() == 4 ? year : year + (year < FIRST_OF_LAST_CENTURY ? 2_000 : 1_900);
    }

    private static Optional<LocalDate> day(int year, int month, int day) {
        try {
            return Optional.of(LocalDate.of(year, month, day));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    /** Names begin alike in the languages of most exports; each entry lists the beginnings of one month's names. */
    private static final String[] MONTHS = {
        "jan ene gen",
        "feb fev fab",
        "mar mrt maa mae",
        "apr avr abr",
        "may mai mag mei maj",
        "jun juin giu",
        "jul juil lug",
        "aug aou ago",
        "sep set",
        "oct okt ott out",
        "nov",
        "dec dez dic des"
    };

    /** Returns the month that a name means, 1 to 12, or 0. */
    public static int month(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT);
        for (int month = 0; month < MONTHS.length; month++) {
            for (String beginning : MONTHS[month].split(" ")) {
                if (plain.startsWith(beginning)) {
                    return month + 1;
                }
            }
        }
        return 0;
    }
}
