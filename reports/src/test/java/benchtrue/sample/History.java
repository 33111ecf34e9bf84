package benchtrue.sample;

import java.time.DayOfWeek;
import java.time.LocalDate;

/**
 * The calendar of the invented shop: its history ends on {@link #AS_OF}.
 *
 * @param start first day of the history
 * @param tickets visits in all
 * @param yearlyGrowth growth of the number of visits a year
 * @param firstBook day the first price book takes effect
 * @param secondBook day the second one does; the same day where there is only one
 * @param slowFrom first day of slower work on the type that gets slower
 */
record History(int start, int tickets, double yearlyGrowth, int firstBook, int secondBook, int slowFrom) {
    /** Last day of every invented history, as days since 1970-01-01. */
    static final int AS_OF = (int) LocalDate.of(2026, 10, 31).toEpochDay();

    /** Day of the older of two overlapping exports. */
    static final int OLDER_EXPORT = (int) LocalDate.of(2025, 12, 31).toEpochDay();

    private static final double SECOND_BOOK_AT = 0.62;
    private static final double SLOW_AT = 0.55;

    /** Days after the start on which an untidy shop first wrote its prices down. */
    private static final int BOOK_AFTER = 6;

    static History of(SampleOptions options) {
        LocalDate end = LocalDate.ofEpochDay(AS_OF);
        LocalDate start = end.minusYears(options.years()).plusDays(1);
        int first = day(start);
        int days = AS_OF - first;
        int second =
                day(LocalDate.ofEpochDay(first + (long) (days * SECOND_BOOK_AT)).withDayOfMonth(1));
        int slow = day(LocalDate.ofEpochDay(first + (long) (days * SLOW_AT)).withDayOfMonth(1));
        return options.untidy()
                ? new History(first, options.tickets(), options.yearlyGrowth(), first + BOOK_AFTER, second, slow)
                : oneBook(options, start, slow);
    }

    private static History oneBook(SampleOptions options, LocalDate start, int slow) {
        int book = day(start.withDayOfYear(1));
        return new History(day(start), options.tickets(), options.yearlyGrowth(), book, book, slow);
    }

    private static int day(LocalDate date) {
        return (int) date.toEpochDay();
    }

    /** Returns the day a visit begins; later visits never begin earlier. */
    int opened(int index) {
        int days = AS_OF - start;
        double share = (index + 0.5) / tickets;
        double years = days / 365.25;
        double rate = StrictMath.log1p(yearlyGrowth);
        double at = rate == 0 ? share : StrictMath.log1p(share * StrictMath.expm1(rate * years)) / (rate * years);
        return workday(start + (int) (at * days));
    }

    /** Returns whether the second book is in force on a day. */
    boolean secondBookOn(int day) {
        return day >= secondBook;
    }

    /** Returns a day, or the Monday after it where it is a Sunday; never after the end. */
    static int workday(int day) {
        return LocalDate.ofEpochDay(day).getDayOfWeek() == DayOfWeek.SUNDAY && day < AS_OF ? day + 1 : day;
    }
}
