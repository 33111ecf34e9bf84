package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.TimeColumn;
import java.util.Arrays;
import java.util.BitSet;

/** Finds each technician's clock times and shares their overlaps. */
final class ClockOverlaps {
    private static final int ROW_BITS = 28;
    private static final long ROW_MASK = (1L << ROW_BITS) - 1;

    /** Earlier than any moment that intake lets through, so that seconds counted from it are positive. */
    private static final long FIRST_MOMENT = -30_000 * EntryHours.DAY;

    private final Sifting table;
    private final TableRows rows;
    private final EntryHours hours;
    private final int[] technicianOf;
    private final BitSet cancelled;

    ClockOverlaps(Sifting table, EntryHours hours, int[] technicianOf, BitSet cancelled) {
        this.table = table;
        rows = table.rows();
        this.hours = hours;
        this.technicianOf = technicianOf;
        this.cancelled = cancelled;
    }

    /** Changes the seconds of rows that overlap another of the same technician; returns the seconds taken off in all. */
    long share(long[] seconds) {
        if (!rows.has(TimeColumn.START) || !rows.has(TimeColumn.END)) {
            return 0;
        }
        int technicians = Arrays.stream(technicianOf).max().orElse(-1) + 1;
        int[] counts = new int[technicians];
        for (int row = 0; row < seconds.length; row++) {
            if (isClocked(row)) {
                counts[technician(row)]++;
            }
        }
        long[][] stretches = new long[technicians][];
        Arrays.setAll(stretches, technician -> new long[counts[technician]]);
        for (int row = 0; row < seconds.length; row++) {
            if (isClocked(row)) {
                stretches[technician(row)][--counts[technician(row)]] = start(row) << ROW_BITS | row;
            }
        }
        long sharedAway = 0;
        for (long[] stretch : stretches) {
            Arrays.sort(stretch);
            sharedAway += share(stretch, seconds);
        }
        return sharedAway;
    }

    private boolean isClocked(int row) {
        return table.accepted(row) && !cancelled.get(row) && hours.isClocked(row);
    }

    private int technician(int row) {
        return technicianOf[rows.code(TimeColumn.TECHNICIAN, row)];
    }

    private long start(int row) {
        return hours.moment(row) - FIRST_MOMENT;
    }

    private long share(long[] stretches, long[] seconds) {
        long[] starts = new long[stretches.length];
        long[] lengths = new long[stretches.length];
        for (int i = 0; i < stretches.length; i++) {
            starts[i] = stretches[i] >>> ROW_BITS;
            lengths[i] = seconds[row(stretches[i])];
        }
        long[] shares = ShareOverlaps.share(starts, lengths);
        long sharedAway = 0;
        for (int i = 0; i < stretches.length; i++) {
            sharedAway += lengths[i] - shares[i];
            if (shares[i] != lengths[i]) {
                seconds[row(stretches[i])] = shares[i];
                table.doubt(Doubt.CLOCK_TIMES_OVERLAP, row(stretches[i]));
            }
        }
        return sharedAway;
    }

    private static int row(long stretch) {
        return (int) (stretch & ROW_MASK);
    }
}
