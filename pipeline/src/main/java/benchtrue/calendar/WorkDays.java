package benchtrue.calendar;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.TimeEntries;
import java.time.LocalDate;

/** The days of the week on which the bench is worked at, by the log of the last 13 weeks. */
final class WorkDays {
    private static final int WEEK = 7;
    private static final int LATELY = 13 * WEEK;

    /** A day with a smaller share of the entries is an exception. */
    private static final double SELDOM = 0.04;

    private final long[] entries = new long[WEEK];
    private long all;

    WorkDays(Ledger ledger) {
        TimeEntries time = ledger.time();
        for (int entry = 0; entry < time.size(); entry++) {
            if (time.workDay(entry) > ledger.asOf() - LATELY && time.workDay(entry) <= ledger.asOf()) {
                entries[weekday(time.workDay(entry))]++;
                all++;
            }
        }
    }

    private static int weekday(int day) {
        return LocalDate.ofEpochDay(day).getDayOfWeek().ordinal();
    }

    /** Returns a day, or the first after it on which the bench is usually worked at. */
    int onOrAfter(int day) {
        for (int next = day; next < day + WEEK; next++) {
            if (entries[weekday(next)] > SELDOM * all) {
                return next;
            }
        }
        return day;
    }
}
