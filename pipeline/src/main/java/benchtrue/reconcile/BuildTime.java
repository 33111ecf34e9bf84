package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.Ints;
import benchtrue.shop.Longs;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeEntry;
import benchtrue.shop.TimeKind;
import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.IntStream;

/** Builds the time entries by ticket then day. */
final class BuildTime {
    private static final TimeKind[] KINDS = TimeKind.values();
    private final RowDispositions table;
    private final TableRows rows;
    private final TicketKeys keys;
    private final TypeKeys types;
    private final LineKeys lines;
    private final EntryTickets tickets;
    private final EntryHours hours;
    private final EntrySpans spans;
    private final int[] lineOf;
    private final int[] typeOf;
    private final int[] technicianOf;
    private final long[] seconds;
    private BitSet cancelled = new BitSet();
    private int[] order = {};
    private long sharedAway;
    private long spread;

    BuildTime(
            RowDispositions table,
            TicketKeys keys,
            TypeKeys types,
            LineKeys lines,
            People people,
            EntryHours hours,
            EntrySpans spans) {
        this.spans = spans;
        this.table = table;
        rows = table.rows();
        this.keys = keys;
        this.types = types;
        this.lines = lines;
        tickets = new EntryTickets(rows, keys);
        this.hours = hours;
        lineOf = lines.codes(rows.column(TimeColumn.LINE));
        typeOf = types.find(rows.column(TimeColumn.REPAIR_TYPE));
        technicianOf = people.codes(rows.column(TimeColumn.TECHNICIAN));
        seconds = new long[rows.size()];
    }

    TimeEntries build(int asOf) {
        for (int row = 0; row < seconds.length; row++) {
            seconds[row] = hours.seconds(row);
            if (table.inQuestion(row)) {
                check(row, asOf);
            }
        }
        cancelled = new CancelPairs(table, tickets, seconds).pair();
        sharedAway = new ClockOverlaps(table, hours, technicianOf, cancelled).share(seconds);
        int[] counting = Arrays.stream(RowOrder.accepted(table))
                .filter(row -> !cancelled.get(row))
                .toArray();
        return entries(pieces(counting, asOf));
    }

    /** Entries of which some are sums, a piece a day: the row of each, its day and its seconds. */
    private record Pieces(int[] rows, int[] days, long[] seconds) {}

    private Pieces pieces(int[] counting, int asOf) {
        Ints ofRow = new Ints();
        Ints days = new Ints();
        Longs parts = new Longs();
        for (int row : counting) {
            int[] over = spans.days(row, seconds[row], asOf);
            spread += over.length > 1 ? 1 : 0;
            for (int piece = 0; piece < over.length; piece++) {
                ofRow.add(row);
                days.add(over[piece]);
                parts.add(seconds[row] * (piece + 1) / over.length - seconds[row] * piece / over.length);
            }
        }
        return new Pieces(ofRow.toArray(), days.toArray(), parts.toArray());
    }

    private TimeEntries entries(Pieces pieces) {
        int[] all = IntStream.range(0, pieces.rows.length).toArray();
        int[] sorted = RowOrder.sorted(all, piece -> tickets.ticket(pieces.rows[piece]), piece -> pieces.days[piece]);
        order = Arrays.stream(sorted).map(piece -> pieces.rows[piece]).toArray();
        TimeEntries.Builder entries = new TimeEntries.Builder();
        for (int piece : sorted) {
            add(entries, pieces.rows[piece], pieces.days[piece], pieces.seconds[piece]);
        }
        return entries.build();
    }

    private void check(int row, int asOf) {
        hours.check(table, row);
        int ticket = tickets.ticket(row);
        if (ticket == TicketKeys.UNKNOWN) {
            String key = tickets.unknown(row);
            table.setAside(row, TimeColumn.TICKET, key, keys.expected(key));
        }
        if (type(row) == TypeKeys.UNKNOWN) {
            String key = rows.text(TimeColumn.REPAIR_TYPE, row);
            table.setAside(row, TimeColumn.REPAIR_TYPE, key, types.expected(key));
        }
        if (ticket == TicketKeys.AFTER || rows.day(TimeColumn.WORK_DATE, row) > asOf) {
            table.after(row);
        }
    }

    private int type(int row) {
        return typeOf[rows.code(TimeColumn.REPAIR_TYPE, row)];
    }

    private void add(TimeEntries.Builder entries, int row, int day, long part) {
        int ticket = tickets.ticket(row);
        TimeEntry entry = new TimeEntry(
                ticket,
                line(row, ticket),
                type(row),
                technicianOf[rows.code(TimeColumn.TECHNICIAN, row)],
                day,
                part,
                kind(row, ticket));
        if (ticket == TimeEntries.SHARED) {
            entries.addShared(entry, tickets.shared(row));
        } else {
            entries.add(entry);
        }
    }

    private int line(int row, int ticket) {
        int code = rows.code(TimeColumn.LINE, row);
        if (code == 0) {
            return Absent.INDEX;
        }
        int line = ticket < 0 ? Absent.INDEX : lines.find(ticket, lineOf[code]);
        if (line == Absent.INDEX) {
            table.doubt(Doubt.UNKNOWN_LINE, row);
        }
        return line;
    }

    private TimeKind kind(int row, int ticket) {
        long word = rows.value(TimeColumn.KIND, row);
        if (!Absent.has(word)) {
            return ticket == Absent.INDEX ? TimeKind.SHOP : TimeKind.BENCH;
        }
        if (KINDS[(int) word] == TimeKind.BENCH && ticket == Absent.INDEX) {
            table.doubt(Doubt.BENCH_WITHOUT_TICKET, row);
            return TimeKind.SHOP;
        }
        return KINDS[(int) word];
    }

    /** Returns how many entries were spread over several days. */
    long spread() {
        return spread;
    }

    /** Returns the seconds that were read but counted once only, because clock times overlap. */
    long sharedAway() {
        return sharedAway;
    }

    /** Returns the row of each entry. */
    int[] rowsInOrder() {
        return order;
    }
}
