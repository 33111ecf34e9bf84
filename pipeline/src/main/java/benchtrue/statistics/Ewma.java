package benchtrue.statistics;

/**
 * Exponentially weighted moving average chart (Roberts 1959; NIST/SEMATECH e-Handbook 6.3.2.4): E(t) = &lambda;x(t) + (1 &minus;
 * &lambda;)E(t&minus;1), from the target. Limits widen as the chart fills: target &plusmn; L&sigma; sqrt(&lambda;/(2 &minus; &lambda;) (1 &minus; (1 &minus;
 * &lambda;)^2t)). {@code NaN} values are no observation: the chart keeps its level and limits. Empty in, empty chart. O(n).
 */
public final class Ewma {
    private final double target;
    private final double[] levels;
    private final double[] widths;

    private Ewma(double target, double[] levels, double[] widths) {
        this.target = target;
        this.levels = levels;
        this.widths = widths;
    }

    /**
     * Returns the chart of values in order.
     *
     * @param target level when nothing has changed
     * @param sigma standard deviation of single values
     * @param lambda weight of the newest value, above 0, at most 1
     * @param sigmas distance of the limits, L
     */
    public static Ewma of(double[] values, double target, double sigma, double lambda, double sigmas) {
        if (!(lambda > 0 && lambda <= 1)) {
            throw new IllegalArgumentException("lambda must lie above 0 and at most at 1, found " + lambda);
        }
        double[] levels = new double[values.length];
        double[] widths = new double[values.length];
        double reach = sigmas * sigma * StrictMath.sqrt(lambda / (2 - lambda));
        double level = target;
        double remaining = 1;
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(values[i])) {
                level = lambda * values[i] + (1 - lambda) * level;
                remaining *= (1 - lambda) * (1 - lambda);
            }
            levels[i] = level;
            widths[i] = reach * StrictMath.sqrt(1 - remaining);
        }
        return new Ewma(target, levels, widths);
    }

    /** Returns the chart's level after point {@code index}. */
    public double level(int index) {
        return levels[index];
    }

    /** Returns the limits at point {@code index}. */
    public Interval limits(int index) {
        return new Interval(target - widths[index], target + widths[index]);
    }

    /** Returns the first point above its upper limit, or -1. */
    public int firstAbove() {
        for (int i = 0; i < levels.length; i++) {
            if (levels[i] - target > widths[i]) {
                return i;
            }
        }
        return -1;
    }
}
