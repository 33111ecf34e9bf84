package benchtrue.shop;

import java.util.HashMap;
import java.util.Map;

/** All time entries as columns, in the order of ticket then day. */
public final class TimeEntries {
    /** The ticket index of an entry that several tickets share. */
    public static final int SHARED = -2;

    private static final TimeKind[] TIME_KINDS = TimeKind.values();
    private final int[] ticket;
    private final int[] line;
    private final int[] repairType;
    private final int[] technician;
    private final int[] workDay;
    private final long[] seconds;
    private final byte[] kind;
    private final Map<Integer, int[]> sharedTickets;

    private TimeEntries(Builder rows) {
        ticket = rows.ticket.toArray();
        line = rows.line.toArray();
        repairType = rows.repairType.toArray();
        technician = rows.technician.toArray();
        workDay = rows.workDay.toArray();
        seconds = rows.seconds.toArray();
        kind = rows.kind.toArray();
        sharedTickets = Map.copyOf(rows.sharedTickets);
    }

    /** Returns how many rows there are. */
    public int size() {
        return ticket.length;
    }

    /** Returns a row as a value; for reading a few, not for loops over millions. */
    public TimeEntry get(int row) {
        return new TimeEntry(
                ticket(row), line(row), repairType(row), technician(row), workDay(row), seconds(row), kind(row));
    }

    /** Returns {@link TimeEntry#ticket} of a row. */
    public int ticket(int row) {
        return ticket[row];
    }

    /** Returns {@link TimeEntry#line} of a row. */
    public int line(int row) {
        return line[row];
    }

    /** Returns {@link TimeEntry#repairType} of a row. */
    public int repairType(int row) {
        return repairType[row];
    }

    /** Returns {@link TimeEntry#technician} of a row. */
    public int technician(int row) {
        return technician[row];
    }

    /** Returns {@link TimeEntry#workDay} of a row. */
    public int workDay(int row) {
        return workDay[row];
    }

    /** Returns {@link TimeEntry#seconds} of a row. */
    public long seconds(int row) {
        return seconds[row];
    }

    /** Returns {@link TimeEntry#kind} of a row. */
    public TimeKind kind(int row) {
        return TIME_KINDS[kind[row]];
    }

    /** Returns the indices of the tickets that share a row marked {@link #SHARED}, in order. */
    public int[] sharedTickets(int row) {
        return sharedTickets.get(row).clone();
    }

    /** Takes rows in the order of their keys. */
    public static final class Builder {
        private final Ints ticket = new Ints();
        private final Ints line = new Ints();
        private final Ints repairType = new Ints();
        private final Ints technician = new Ints();
        private final Ints workDay = new Ints();
        private final Longs seconds = new Longs();
        private final Bytes kind = new Bytes();
        private final Map<Integer, int[]> sharedTickets = new HashMap<>();

        /** Appends a row and returns this builder. */
        public Builder add(TimeEntry row) {
            ticket.add(row.ticket());
            line.add(row.line());
            repairType.add(row.repairType());
            technician.add(row.technician());
            workDay.add(row.workDay());
            seconds.add(row.seconds());
            kind.add((byte) row.kind().ordinal());
            return this;
        }

        /** Appends a row that several tickets share; its own ticket must be {@link #SHARED}. */
        public Builder addShared(TimeEntry row, int[] tickets) {
            sharedTickets.put(ticket.size(), tickets.clone());
            return add(row);
        }

        /** Returns how many rows were taken. */
        public int size() {
            return ticket.size();
        }

        /** Returns the rows as columns. */
        public TimeEntries build() {
            return new TimeEntries(this);
        }
    }
}
