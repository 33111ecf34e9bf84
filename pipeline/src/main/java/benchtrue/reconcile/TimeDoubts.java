package benchtrue.reconcile;

import benchtrue.intake.columns.TimeColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.Ints;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.Tickets;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.Wage;
import java.util.Arrays;
import java.util.List;

/** Lists time entries that count but look odd. Entries and rows stand in the same order. */
final class TimeDoubts {
    private static final long MINUTE = 60;
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

    /** Adds up seconds by technician and day, in the order the days are first met. */
    static final class DayTotals {
        private long[] keys = new long[64];
        private long[] totals = new long[64];
        private final Ints firstRows = new Ints();
        private int[] slots = new int[128];

        void add(int technician, int day, long seconds, int row) {
            long key = (long) technician << 32 | day & 0xFFFFFFFFL;
            int slot = slot(key);
            if (slots[slot] == 0) {
                insert(key, slot, row);
                slot = slot(key);
            }
            int place = slots[slot] - 1;
            totals[place] += seconds;
            firstRows.set(place, Math.min(firstRows.get(place), row));
        }

        int size() {
            return firstRows.size();
        }

        long seconds(int place) {
            return totals[place];
        }

        /** Returns the first row of a day. */
        int firstRow(int place) {
            return firstRows.get(place);
        }

        private void insert(long key, int slot, int row) {
            if (size() == keys.length) {
                keys = Arrays.copyOf(keys, 2 * size());
                totals = Arrays.copyOf(totals, 2 * size());
            }
            keys[size()] = key;
            firstRows.add(row);
            slots[slot] = size();
            if (2 * size() > slots.length) {
                slots = new int[2 * slots.length];
                for (int place = 0; place < size(); place++) {
                    slots[slot(keys[place])] = place + 1;
                }
            }
        }

        private int slot(long key) {
            long mixed = key * 0x9E3779B97F4A7C15L;
            int slot = (int) (mixed >>> 32) & (slots.length - 1);
            while (slots[slot] > 0 && keys[slots[slot] - 1] != key) {
                slot = (slot + 1) & (slots.length - 1);
            }
            return slot;
        }
    }
}
