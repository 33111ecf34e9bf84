package benchtrue.reconcile;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * Shares the minutes in which one technician's clock times overlap, so that no minute counts twice: of a second in which
 * n stretches run, each gets 1/n. Shares are whole seconds by largest remainder; a knot of overlapping stretches adds up
 * to the time from its first start to its last end.
 */
final class ShareOverlaps {
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
