package benchtrue.calendar;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeKind;
import benchtrue.shop.Wage;
import java.util.Arrays;

/**
 * Bench hours that the shop has in a week: as recorded for the technicians who logged time lately, else as logged.
 *
 * @param hours hours a week, NaN where neither is there
 * @param from where they come from, in plain words
 */
record WeeklyHours(double hours, String from) {
    static final int DAYS = 7;
    private static final int LATELY = 8 * DAYS;
    private static final int QUARTER_WEEKS = 13;

    static WeeklyHours of(Ledger ledger) {
        long recorded = recorded(ledger);
        if (recorded > 0) {
            return new WeeklyHours(
                    Hours.of(recorded), "weekly bench hours recorded for those who logged time in the last 8 weeks");
        }
        long logged = logged(ledger);
        return logged > 0
                ? new WeeklyHours(Hours.of(logged) / QUARTER_WEEKS, "bench hours logged in the last 13 weeks")
                : new WeeklyHours(Double.NaN, "no bench hours in the last 13 weeks");
    }

    private static long recorded(Ledger ledger) {
        boolean[] active = new boolean[ledger.technicians().size()];
        TimeEntries time = ledger.time();
        for (int entry = 0; entry < time.size(); entry++) {
            active[time.technician(entry)] |= time.workDay(entry) > ledger.asOf() - LATELY;
        }
        long[] weekly = new long[active.length];
        for (Wage wage : ledger.wages()) {
            if (wage.effectiveFrom() <= ledger.asOf()) {
                weekly[wage.technician()] =
                        active[wage.technician()] ? Absent.firstOf(wage.weeklyBenchSeconds(), 0) : 0;
            }
        }
        return Arrays.stream(weekly).sum();
    }

    private static long logged(Ledger ledger) {
        TimeEntries time = ledger.time();
        long seconds = 0;
        for (int entry = 0; entry < time.size(); entry++) {
            if (time.kind(entry) == TimeKind.BENCH
                    && time.ticket(entry) != Absent.INDEX
                    && time.workDay(entry) > ledger.asOf() - QUARTER_WEEKS * DAYS) {
                seconds += time.seconds(entry);
            }
        }
        return seconds;
    }
}
