package benchtrue.shop;

import java.util.HashMap;
import java.util.Map;

/** All time entries as columns, in the order of ticket then day. */
public final class TimeEntries {
    /** The ticket index of an entry that several tickets share. */
    public static final int SHARED = -2;

    private static final TimeKind[] TIME_KINDS = TimeKind.values();

    private final Ints ticket;
    private final Ints line;
    private final Ints repairType;
    private final Ints technician;
    private final Ints workDay;
    private final Longs seconds;
    private final Bytes kind;
    private final Map<Integer, int[]> sharedTickets = new HashMap<>();

    private TimeEntries(int room) {
        ticket = new Ints(room);
        line = new Ints(room);
        repairType = new Ints(room);
        technician = new Ints(room);
        workDay = new Ints(room);
        seconds = new Longs(room);
        kind = new Bytes(room);
    }

    /** Returns how many rows there are. */
    public int size() {
        return ticket.size();
    }

    /** Returns a row as a value; for reading a few, not for loops over millions. */
    public TimeEntry get(int row) {
        return new TimeEntry(
                ticket(row), line(row), repairType(row), technician(row), workDay(row), seconds(row), kind(row));
    }

    /** Returns {@link TimeEntry#ticket} of a row. */
    public int ticket(int row) {
        return ticket.get(row);
    }

    /** Returns {@link TimeEntry#line} of a row. */
    public int line(int row) {
        return line.get(row);
    }

    /** Returns {@link TimeEntry#repairType} of a row. */
    public int repairType(int row) {
        return repairType.get(row);
    }

    /** Returns {@link TimeEntry#technician} of a row. */
    public int technician(int row) {
        return technician.get(row);
    }

    /** Returns {@link TimeEntry#workDay} of a row. */
    public int workDay(int row) {
        return workDay.get(row);
    }

    /** Returns {@link TimeEntry#seconds} of a row. */
    public long seconds(int row) {
        return seconds.get(row);
    }

    /** Returns {@link TimeEntry#kind} of a row. */
    public TimeKind kind(int row) {
        return TIME_KINDS[kind.get(row)];
    }

    /** Returns the indices of the tickets that share a row marked {@link #SHARED}, in order. */
    public int[] sharedTickets(int row) {
        return sharedTickets.get(row).clone();
    }

    /** Takes rows in the order of their keys, until they are built. */
    public static final class Builder {
        private final TimeEntries rows;

        /** Begins without rows. */
        public Builder() {
            this(0);
        }

        /** Begins without rows, with room for so many that are sure to come. */
        public Builder(int room) {
            rows = new TimeEntries(room);
        }

        /** Appends a row and returns this builder. */
        public Builder add(TimeEntry row) {
            rows.ticket.add(row.ticket());
            rows.line.add(row.line());
            rows.repairType.add(row.repairType());
            rows.technician.add(row.technician());
            rows.workDay.add(row.workDay());
            rows.seconds.add(row.seconds());
            rows.kind.add((byte) row.kind().ordinal());
            return this;
        }

        /** Appends a row that several tickets share; its own ticket must be {@link #SHARED}. */
        public Builder addShared(TimeEntry row, int[] tickets) {
            rows.sharedTickets.put(rows.ticket.size(), tickets.clone());
            return add(row);
        }

        /** Returns the rows as columns. */
        public TimeEntries build() {
            return rows;
        }
    }
}
