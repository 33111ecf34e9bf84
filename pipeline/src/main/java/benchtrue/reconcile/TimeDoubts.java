package benchtrue.reconcile;

import benchtrue.intake.columns.TimeColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.Tickets;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.Wage;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Lists time entries that count but look odd. Entries and rows stand in the same order. */
final class TimeDoubts {
    private static final long MINUTE = 60;

    /** In days: nobody is away so long without leaving, or nearly. */
    private static final int HALF_A_YEAR = 183;

    /** In days: longer than people are away who go on at another wage, which seldom is a lower one. */
    private static final int A_MONTH = 31;

    /** In days: how long after the first work a new wage is still that of the one who came. */
    private static final int LATE_WAGE = 92;

    private final RowDispositions table;
    private final int[] order;
    private final TimeEntries entries;

    TimeDoubts(RowDispositions table, int[] order, TimeEntries entries) {
        this.table = table;
        this.order = order;
        this.entries = entries;
    }

    void outsideTicket(Tickets tickets) {
        for (int i = 0; i < order.length; i++) {
            int ticket = entries.ticket(i);
            if (ticket >= 0 && entries.workDay(i) < tickets.opened(ticket)) {
                table.doubt(Doubt.TIME_BEFORE_OPENING, order[i]);
            }
            if (ticket >= 0 && Absent.has(tickets.closed(ticket)) && entries.workDay(i) > tickets.closed(ticket)) {
                table.doubt(Doubt.TIME_AFTER_CLOSE, order[i]);
            }
        }
    }

    void withoutWage(List<Wage> wages, int technicians) {
        int[] first = new int[technicians];
        Arrays.fill(first, Integer.MAX_VALUE);
        wages.forEach(wage -> first[wage.technician()] = Math.min(first[wage.technician()], wage.effectiveFrom()));
        for (int i = 0; i < order.length; i++) {
            if (entries.workDay(i) < first[entries.technician(i)]) {
                table.doubt(Doubt.NO_WAGE, order[i]);
            }
        }
    }

    /**
     * Lists what a technician logs first after half a year without any time where another wage began since, or after a month
     * where a lower one did: until that day it counts at the wage of whoever had the key before.
     *
     * @param wages by technician and first day
     */
    void keyUsedAgain(List<Wage> wages) {
        Map<Integer, int[]> days = new HashMap<>();
        for (int i = 1; i < wages.size(); i++) {
            Wage before = wages.get(i - 1);
            Wage since = wages.get(i);
            if (before.technician() == since.technician()) {
                firstDayAgain(before, since, days.computeIfAbsent(since.technician(), this::days))
                        .ifPresent(
                                first -> again(since.technician(), first, Math.max(first, since.effectiveFrom() - 1)));
            }
        }
    }

    private int[] days(int technician) {
        return IntStream.range(0, order.length)
                .filter(i -> entries.technician(i) == technician)
                .map(entries::workDay)
                .sorted()
                .toArray();
    }

    private static OptionalInt firstDayAgain(Wage before, Wage since, int[] days) {
        int away = since.hourlyWage() < before.hourlyWage() ? A_MONTH : HALF_A_YEAR;
        return IntStream.range(1, days.length)
                .filter(i -> days[i] - days[i - 1] >= away
                        && days[i - 1] >= before.effectiveFrom()
                        && days[i - 1] < since.effectiveFrom()
                        && since.effectiveFrom() <= days[i] + LATE_WAGE)
                .map(i -> days[i])
                .findFirst();
    }

    private void again(int technician, int first, int last) {
        for (int i = 0; i < order.length; i++) {
            if (entries.technician(i) == technician && entries.workDay(i) >= first && entries.workDay(i) <= last) {
                table.doubt(Doubt.KEY_USED_AGAIN, order[i]);
            }
        }
    }

    void longDays() {
        Map<Long, DayTotal> days = new LinkedHashMap<>();
        for (int i = 0; i < order.length; i++) {
            long key = (long) entries.technician(i) << 32 | entries.workDay(i) & 0xFFFFFFFFL;
            days.computeIfAbsent(key, fresh -> new DayTotal()).add(entries.seconds(i), order[i]);
        }
        for (DayTotal day : days.values()) {
            if (day.seconds > EntryHours.DAY) {
                table.doubt(
                        Doubt.DAY_OVER_24_HOURS,
                        day.firstRow,
                        () -> "with the others of " + table.rows().text(TimeColumn.WORK_DATE, day.firstRow));
            }
        }
    }

    /** What one technician logged on one day, and the first row of it. */
    private static final class DayTotal {
        private long seconds;
        private int firstRow = Integer.MAX_VALUE;

        void add(long more, int row) {
            seconds += more;
            firstRow = Math.min(firstRow, row);
        }
    }

    void equalToQuote(QuotedLines lines) {
        long[] logged = new long[lines.size()];
        int[] lastRow = new int[lines.size()];
        for (int i = 0; i < order.length; i++) {
            if (entries.line(i) >= 0) {
                logged[entries.line(i)] += entries.seconds(i);
                lastRow[entries.line(i)] = order[i];
            }
        }
        for (int line = 0; line < logged.length; line++) {
            long quoted = lines.judgedSeconds(line);
            if (logged[line] > 0 && Absent.has(quoted) && Math.abs(logged[line] - quoted) < MINUTE) {
                table.doubt(Doubt.HOURS_EQUAL_QUOTE, lastRow[line]);
            }
        }
    }

    /** Lists the last time of each ticket that has what a closed one without any hours lacks. */
    void perhapsOfAnother(Tickets tickets, QuotedLines lines) {
        TicketSums sums = TicketSums.of(tickets, lines, entries);
        for (int i = 0; i < order.length; i++) {
            int row = order[i];
            int ticket = entries.ticket(i);
            if (ticket >= 0 && sums.last()[ticket] == i) {
                sums.lacking(ticket, entries.workDay(i))
                        .ifPresent(other -> table.doubt(
                                Doubt.PERHAPS_OF_ANOTHER, row, () -> "with ticket " + tickets.ticket(other)));
            }
        }
    }
}
