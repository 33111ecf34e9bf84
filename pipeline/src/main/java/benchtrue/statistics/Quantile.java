package benchtrue.statistics;

import java.util.Arrays;

/**
 * Sample quantiles by Hyndman and Fan (1996, The American Statistician 50, 361-365), types 6 and 7.
 *
 * <p>With j = floor(np + m) and g = np + m &minus; j the quantile is (1 &minus; g) x[j] + g x[j+1]. Type 7 (m = 1 &minus; p) is spreadsheets'
 * inclusive function, type 6 (m = p) the exclusive one. Empty input gives {@code NaN}; one value is its own quantile at every
 * {@code p}; ties need no care. np + m within four rounding errors of a whole number counts as that number.
 */
public final class Quantile {
    private static final double FUZZ = 4 * Math.ulp(1.0);

    private Quantile() {}

    /** Returns a sorted copy; {@code NaN} sorts last, so that a sample with a {@code NaN} must be cleaned before. */
    public static double[] sorted(double[] values) {
        double[] copy = values.clone();
        Arrays.sort(copy);
        return copy;
    }

    /**
     * Returns the type 7 quantile of ascending values.
     *
     * @param sorted ascending, without {@code NaN}
     * @param p share of the values below, 0 to 1
     * @throws IllegalArgumentException if {@code p} is out of range or the last value is {@code NaN}
     */
    public static double of(double[] sorted, double p) {
        return at(sorted, p, 1 - p);
    }

    /** Returns the type 6 quantile, likewise. */
    public static double exclusive(double[] sorted, double p) {
        return at(sorted, p, p);
    }

    /** Returns the median of ascending values; of an even number, the mean of the middle two. */
    public static double median(double[] sorted) {
        return of(sorted, 0.5);
    }

    private static double at(double[] sorted, double p, double m) {
        if (!(p >= 0 && p <= 1)) {
            throw new IllegalArgumentException("a quantile's level must lie in 0 to 1, found " + p);
        }
        int n = sorted.length;
        if (n == 0) {
            return Double.NaN;
        }
        if (Double.isNaN(sorted[n - 1])) {
            throw new IllegalArgumentException("a sample with NaN has no quantiles");
        }
        double position = n * p + m;
        double j = StrictMath.floor(position + FUZZ * n);
        double g = position - j;
        double weight = StrictMath.abs(g) <= FUZZ * n ? 0 : g;
        double low = sorted[(int) clamp(j - 1, n)];
        double high = sorted[(int) clamp(j, n)];
        return weight == 0 || low == high ? low : (1 - weight) * low + weight * high;
    }

    private static double clamp(double index, int n) {
        return StrictMath.max(0, StrictMath.min(n - 1, index));
    }
}
