package benchtrue.statistics;

/**
 * Tabular cumulative sum chart (Page 1954; NIST/SEMATECH e-Handbook 6.3.2.3): S_hi(t) = max(0, S_hi(t&minus;1) + x(t) &minus; target
 * &minus; k), S_lo(t) = max(0, S_lo(t&minus;1) + target &minus; k &minus; x(t)); a signal where a sum exceeds h. k and h are in the unit of the
 * values; the sums run on after a signal. {@code NaN} is no observation. Empty in, empty chart. O(n).
 */
public final class Cusum {
    private final double[] high;
    private final double[] low;
    private final double threshold;

    private Cusum(double[] high, double[] low, double threshold) {
        this.high = high;
        this.low = low;
        this.threshold = threshold;
    }

    /**
     * Returns the chart of values in order.
     *
     * @param target level when nothing has changed
     * @param slack k, half the shift worth finding
     * @param threshold h, often 4 or 5 standard deviations
     */
    public static Cusum of(double[] values, double target, double slack, double threshold) {
        double[] high = new double[values.length];
        double[] low = new double[values.length];
        double up = 0;
        double down = 0;
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(values[i])) {
                up = StrictMath.max(0, up + values[i] - target - slack);
                down = StrictMath.max(0, down + target - slack - values[i]);
            }
            high[i] = up;
            low[i] = down;
        }
        return new Cusum(high, low, threshold);
    }

    /** Returns the number of points. */
    int size() {
        return high.length;
    }

    /** Returns the upper sum after point {@code index}. */
    double high(int index) {
        return high[index];
    }

    /** Returns the lower sum after point {@code index}. */
    double low(int index) {
        return low[index];
    }

    /** Returns the first point at which the upper sum exceeds the threshold, or -1. */
    int firstAbove() {
        return first(high);
    }

    /** Returns the first point at which the lower sum exceeds the threshold, or -1. */
    int firstBelow() {
        return first(low);
    }

    /** Returns where the run of the upper sum that holds {@code index} began: the point after the sum was last 0. */
    public int startOfRise(int index) {
        return start(high, index);
    }

    /** Returns where the run of the lower sum that holds {@code index} began. */
    int startOfFall(int index) {
        return start(low, index);
    }

    private int first(double[] sums) {
        for (int i = 0; i < sums.length; i++) {
            if (sums[i] > threshold) {
                return i;
            }
        }
        return -1;
    }

    private static int start(double[] sums, int index) {
        int start = index;
        while (start > 0 && sums[start - 1] > 0) {
            start--;
        }
        return start;
    }
}
