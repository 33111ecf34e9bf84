package benchtrue.shop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * All time entries, in the order of ticket then day.
 *
 * <p>An accessor with the name of a part of {@link TimeEntry} returns that part of a row.
 */
public final class TimeEntries {
    /** The ticket index of an entry that several tickets share. */
    public static final int SHARED = -2;

    private final TimeEntry[] rows;
    private final Map<Integer, int[]> sharedTickets;

    private TimeEntries(Builder from) {
        rows = from.rows.toArray(TimeEntry[]::new);
        sharedTickets = Map.copyOf(from.sharedTickets);
    }

    public int size() {
        return rows.length;
    }

    public TimeEntry get(int row) {
        return rows[row];
    }

    public int ticket(int row) {
        return rows[row].ticket();
    }

    public int line(int row) {
        return rows[row].line();
    }

    public int repairType(int row) {
        return rows[row].repairType();
    }

    public int technician(int row) {
        return rows[row].technician();
    }

    public int workDay(int row) {
        return rows[row].workDay();
    }

    public long seconds(int row) {
        return rows[row].seconds();
    }

    public TimeKind kind(int row) {
        return rows[row].kind();
    }

    /** Returns the indices of the tickets that share a row marked {@link #SHARED}, in order. */
    public int[] sharedTickets(int row) {
        return sharedTickets.get(row).clone();
    }

    /** Takes rows in the order of their keys, until they are built. */
    public static final class Builder {
        private final List<TimeEntry> rows = new ArrayList<>();
        private final Map<Integer, int[]> sharedTickets = new HashMap<>();

        public Builder add(TimeEntry row) {
            rows.add(row);
            return this;
        }

        /** Appends a row that several tickets share; its own ticket must be {@link #SHARED}. */
        public Builder addShared(TimeEntry row, int[] tickets) {
            sharedTickets.put(rows.size(), tickets.clone());
            return add(row);
        }

        public TimeEntries build() {
            return new TimeEntries(this);
        }
    }
}
