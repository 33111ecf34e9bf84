package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.TimeColumn;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/** Finds each technician's clock times and shares their overlaps. */
final class ClockOverlaps {
    private static final int ROW_BITS = 28;
    private static final long ROW_MASK = (1L << ROW_BITS) - 1;

    /** Earlier than any moment that intake lets through, so that seconds counted from it are positive. */
    private static final long FIRST_MOMENT = -30_000 * EntryHours.DAY;

    private final RowDispositions table;
    private final TableRows rows;
    private final EntryHours hours;
    private final int[] technicianOf;
    private final BitSet cancelled;

    ClockOverlaps(RowDispositions table, EntryHours hours, int[] technicianOf, BitSet cancelled) {
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

    /**
     * Shares the minutes in which one technician's clock times overlap, so that no minute counts twice: of a second in which
     * n stretches run, each gets 1/n. Shares are whole seconds by largest remainder; a knot of overlapping stretches adds up
     * to the time from its first start to its last end.
     */
    static final class ShareOverlaps {
        private final long[] starts;
        private final long[] seconds;

        private ShareOverlaps(long[] starts, long[] seconds) {
            this.starts = starts;
            this.seconds = seconds;
        }

        /**
         * Returns the seconds that each stretch of one technician counts.
         *
         * @param starts second at which each began, counted from one common day, ascending
         * @param lengths seconds of each, not negative
         */
        static long[] share(long[] starts, long[] lengths) {
            ShareOverlaps share = new ShareOverlaps(starts, lengths.clone());
            int first = 0;
            long latest = Long.MIN_VALUE;
            for (int i = 0; i < starts.length; i++) {
                if (starts[i] >= latest) {
                    share.knot(first, i);
                    first = i;
                }
                latest = Math.max(latest, starts[i] + lengths[i]);
            }
            share.knot(first, starts.length);
            return share.seconds;
        }

        /** Shares a run of stretches each of which overlaps an earlier one. */
        private void knot(int from, int to) {
            if (to - from < 2) {
                return;
            }
            long[] begins = Arrays.copyOfRange(starts, from, to);
            long[] ends = IntStream.range(from, to)
                    .mapToLong(i -> starts[i] + seconds[i])
                    .sorted()
                    .toArray();
            long[] times = LongStream.concat(LongStream.of(begins), LongStream.of(ends))
                    .sorted()
                    .distinct()
                    .toArray();
            double[] shareUpTo = shareUpTo(times, begins, ends);
            double[] shares = new double[to - from];
            for (int i = from; i < to; i++) {
                shares[i - from] = shareUpTo[Arrays.binarySearch(times, starts[i] + seconds[i])]
                        - shareUpTo[Arrays.binarySearch(times, starts[i])];
            }
            deal(from, times[times.length - 1] - times[0], shares);
        }

        /** Returns what a stretch that ran from the first time on would get up to each time. */
        private static double[] shareUpTo(long[] times, long[] begins, long[] ends) {
            double[] upTo = new double[times.length];
            int begun = 0;
            int ended = 0;
            for (int t = 0; t + 1 < times.length; t++) {
                while (begun < begins.length && begins[begun] <= times[t]) {
                    begun++;
                }
                while (ended < ends.length && ends[ended] <= times[t]) {
                    ended++;
                }
                upTo[t + 1] = upTo[t] + (times[t + 1] - times[t]) / (double) (begun - ended);
            }
            return upTo;
        }

        private void deal(int from, long whole, double[] shares) {
            long left = whole;
            for (int i = 0; i < shares.length; i++) {
                seconds[from + i] = (long) shares[i];
                left -= seconds[from + i];
            }
            int[] byRemainder = IntStream.range(0, shares.length)
                    .boxed()
                    .sorted(Comparator.comparingDouble((Integer i) -> Math.floor(shares[i]) - shares[i]))
                    .mapToInt(Integer::intValue)
                    .toArray();
            for (int i = 0; left > 0; i = (i + 1) % byRemainder.length) {
                seconds[from + byRemainder[i]]++;
                left--;
            }
        }
    }
}
