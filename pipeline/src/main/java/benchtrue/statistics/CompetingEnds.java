package benchtrue.statistics;

import java.util.Arrays;
import java.util.Comparator;

/**
 * How often something has ended in one of several ways by a time (Aalen, Johansen 1978): each end keeps the others from
 * happening, what has not ended yet is censored. At a tie ends come before censoring. With a single way to end it is one
 * minus the product-limit curve. O(n log n).
 */
public final class CompetingEnds {
    /** How something that has not ended is marked. */
    public static final int OPEN = 0;

    private final double[] times;
    private final double[] ended;

    private CompetingEnds(double[] times, double[] ended) {
        this.times = times;
        this.ended = ended;
    }

    /**
     * Returns how often things have ended in one way.
     *
     * @param times when each ended, or how long it has lasted, not negative
     * @param ends {@link #OPEN} or the way in which each ended
     * @param way the way that is asked for
     */
    public static CompetingEnds of(double[] times, int[] ends, int way) {
        Integer[] order = new Integer[times.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble((Integer i) -> times[i]));
        double[] at = new double[order.length];
        double[] ended = new double[order.length];
        double lasts = 1;
        double share = 0;
        int next = 0;
        for (int i = 0; i < order.length; i = next) {
            int risk = order.length - i;
            int all = 0;
            int wanted = 0;
            while (next < order.length && times[order[next]] == times[order[i]]) {
                all += ends[order[next]] == OPEN ? 0 : 1;
                wanted += ends[order[next]] == way ? 1 : 0;
                next++;
            }
            share += lasts * wanted / risk;
            lasts *= (risk - all) / (double) risk;
            Arrays.fill(at, i, next, times[order[i]]);
            Arrays.fill(ended, i, next, share);
        }
        return new CompetingEnds(at, ended);
    }

    /** Returns the share that has ended in that way by a time. */
    public double by(double time) {
        double share = 0;
        for (int i = 0; i < times.length && times[i] <= time; i++) {
            share = ended[i];
        }
        return share;
    }

    /** Returns the time by which a share above 0 has ended in that way; {@code NaN} where that is not reached. */
    public double quantile(double share) {
        for (int i = 0; i < times.length; i++) {
            if (ended[i] >= share - 1e-12) {
                return times[i];
            }
        }
        return Double.NaN;
    }
}
