package benchtrue.reconcile;

import benchtrue.intake.TimeColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.Tickets;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.Wage;
import java.util.Arrays;
import java.util.List;

/** Lists time entries that count but look odd. Entries and rows stand in the same order. */
final class TimeDoubts {
    private static final long MINUTE = 60;
    private final Sifting table;
    private final int[] order;
    private final TimeEntries entries;

    TimeDoubts(Sifting table, int[] order, TimeEntries entries) {
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

    void longDays() {
        DayTotals days = new DayTotals();
        for (int i = 0; i < order.length; i++) {
            days.add(entries.technician(i), entries.workDay(i), entries.seconds(i), order[i]);
        }
        for (int day = 0; day < days.size(); day++) {
            int row = days.firstRow(day);
            if (days.seconds(day) > EntryHours.DAY) {
                table.doubt(
                        Doubt.DAY_OVER_24_HOURS,
                        row,
                        () -> "with the others of " + table.rows().text(TimeColumn.WORK_DATE, row));
            }
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
}
