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
        ticket = rows.ticket.handOver();
        line = rows.line.handOver();
        repairType = rows.repairType.handOver();
        technician = rows.technician.handOver();
        workDay = rows.workDay.handOver();
        seconds = rows.seconds.handOver();
        kind = rows.kind.handOver();
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
        private final Ints ticket;
        private final Ints line;
        private final Ints repairType;
        private final Ints technician;
        private final Ints workDay;
        private final Longs seconds;
        private final Bytes kind;
        private final Map<Integer, int[]> sharedTickets = new HashMap<>();

        /** Begins without rows. */
        public Builder() {
            this(0);
        }

        /** Begins without rows, with room for so many that are sure to come. */
        public Builder(int room) {
            ticket = new Ints(room);
            line = new Ints(room);
            repairType = new Ints(room);
            technician = new Ints(room);
            workDay = new Ints(room);
            seconds = new Longs(room);
            kind = new Bytes(room);
        }

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

        /** Returns the rows as columns, and forgets them. */
        public TimeEntries build() {
            return new TimeEntries(this);
        }
    }
}
