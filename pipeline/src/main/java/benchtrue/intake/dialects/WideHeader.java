package benchtrue.intake.dialects;

import benchtrue.intake.cells.DateSystem;
import benchtrue.intake.cells.DateText;
import benchtrue.intake.columns.WideNames;
import benchtrue.settings.DateOrder;
import benchtrue.settings.Unpivot;
import benchtrue.settings.UnpivotHeader;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the header of a wide table's column says: a date, a weekday or day that counts from another cell, or words. */
public final class WideHeader {
    private static final Pattern DATE = Pattern.compile("\\d{1,4}[./-]\\d{1,2}[./-]\\d{2,4}");
    private static final Pattern WEEK =
            Pattern.compile("(?i)(?:KW|CW|W|week|wk|woche|semaine|sem|s)[ .-]?(\\d{1,2})\\b");
    private static final Pattern YEAR = Pattern.compile("(?<!\\d)(20\\d\\d)(?!\\d)");
    private static final Pattern NUMBERED_MONTH =
            Pattern.compile("(?<!\\d)(?:(20\\d\\d)[-/._ ](\\d{1,2})|(\\d{1,2})[-/._ ](20\\d\\d))(?!\\d)");
    private static final Pattern WORD = Pattern.compile("\\p{L}{3,}");

    private final Unpivot said;
    private final Supplier<DateOrder> order;

    /**
     * Takes what the rule says.
     *
     * @param order of dates with slashes or hyphens
     */
    WideHeader(Unpivot said, Supplier<DateOrder> order) {
        this.said = said;
        this.order = order;
    }

    /** Returns what the header says of an entry: a date where it counts days, else itself. */
    String text(String name, String anchor) {
        Optional<LocalDate> day = switch (said.header()) {
            case TEXT -> Optional.empty();
            case DATE -> date(name, order).or(() -> anchored(anchor).flatMap(from -> next(WideNames.bare(name), from)));
            case WEEKDAY ->
                anchored(anchor)
                        .flatMap(from -> WideNames.weekday(name)
                                .map(to -> from.with(
                                        said.before().isPresent()
                                                ? TemporalAdjusters.previousOrSame(to)
                                                : TemporalAdjusters.nextOrSame(to))));
            case DAY -> anchored(anchor).flatMap(month -> day(month, name));
        };
        return day.map(LocalDate::toString)
                .orElse(said.header() == UnpivotHeader.TEXT ? name : (anchor + " " + name).strip());
    }

    private static Optional<LocalDate> day(LocalDate month, String name) {
        Matcher found = WideNames.DAY.matcher(WideNames.plain(name));
        int day = found.matches() ? Integer.parseInt(found.group(1)) : 0;
        return day < 1 || day > month.lengthOfMonth() ? Optional.empty() : Optional.of(month.withDayOfMonth(day));
    }

    /** Returns the first such day of a year that does not lie far before a date. */
    private Optional<LocalDate> next(String name, LocalDate from) {
        Matcher found = WideNames.DAY_AND_MONTH.matcher(name);
        if (!found.matches()) {
            return Optional.empty();
        }
        boolean monthFirst = name.indexOf('.') < 0 && order.get() == DateOrder.MONTH_DAY_YEAR;
        try {
            LocalDate same = LocalDate.of(
                    from.getYear(),
                    Integer.parseInt(found.group(monthFirst ? 1 : 2)),
                    Integer.parseInt(found.group(monthFirst ? 2 : 1)));
            return Optional.of(
                    ChronoUnit.DAYS.between(same, from) > 180
                            ? same.plusYears(1)
                            : ChronoUnit.DAYS.between(from, same) > 180 ? same.minusYears(1) : same);
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    private Optional<LocalDate> anchored(String text) {
        return anchor(text, order);
    }

    /** Returns the first day that a text names: of a date, a week (ISO 8601) or a month. */
    public static Optional<LocalDate> anchor(String text, Supplier<DateOrder> order) {
        Optional<LocalDate> whole = date(text, order);
        if (whole.isPresent()) {
            return whole;
        }
        Matcher date = DATE.matcher(text);
        if (date.find()) {
            return DateText.read(date.group(), order, DateSystem.FROM_1900);
        }
        Matcher year = YEAR.matcher(text);
        Matcher week = WEEK.matcher(text);
        if (year.find() && week.find()) {
            return week(Integer.parseInt(year.group(1)), Integer.parseInt(week.group(1)));
        }
        Matcher month = NUMBERED_MONTH.matcher(text);
        if (month.find()) {
            boolean yearFirst = month.group(1) != null;
            return month(month.group(yearFirst ? 1 : 4), Integer.parseInt(month.group(yearFirst ? 2 : 3)));
        }
        return year.reset().find() ? named(text, year.group(1)) : Optional.empty();
    }

    private static Optional<LocalDate> named(String text, String year) {
        Matcher word = WORD.matcher(text);
        while (word.find()) {
            if (DateText.month(word.group()) > 0) {
                return month(year, DateText.month(word.group()));
            }
        }
        return Optional.empty();
    }

    private static Optional<LocalDate> month(String year, int month) {
        return month < 1 || month > 12 ? Optional.empty() : Optional.of(LocalDate.of(Integer.parseInt(year), month, 1));
    }

    private static Optional<LocalDate> week(int year, int week) {
        return week < 1 || week > 53
                ? Optional.empty()
                : Optional.of(LocalDate.of(year, 1, 4)
                        .with(IsoFields.WEEK_OF_WEEK_BASED_YEAR, week)
                        .with(DayOfWeek.MONDAY));
    }

    private static Optional<LocalDate> date(String text, Supplier<DateOrder> order) {
        return DateText.read(WideNames.bare(text), order, DateSystem.FROM_1900);
    }
}
