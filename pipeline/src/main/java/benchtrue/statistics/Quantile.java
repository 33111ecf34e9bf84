package benchtrue.statistics;

import java.util.Arrays;

/**
 * Sample quantiles by the nine definitions of Hyndman and Fan (1996, The American Statistician 50, 361-365).
 *
 * <p>With j = floor(np + m) and g = np + m &minus; j the quantile is (1 &minus; &gamma;) x[j] + &gamma; x[j+1]. Type 7 (m = 1 &minus; p) is the
 * default everywhere in this program, as in spreadsheets' inclusive function. Empty input gives {@code NaN}; one value is its
 * own quantile at every {@code p}; ties need no care. np + m within four rounding errors of a whole number counts as that number.
 */
public final class Quantile {
    /** The definition used unless another is stated. */
    public static final int TYPE = 7;

    private static final double FUZZ = 4 * Math.ulp(1.0);

    private Quantile() {}

    /** Returns a sorted copy; {@code NaN} sorts last, so that a sample with a {@code NaN} must be cleaned before. */
    public static double[] sorted(double[] values) {
        double[] copy = values.clone();
        Arrays.sort(copy);
        return copy;
    }

    /** Returns the type 7 quantile of ascending values. */
    public static double of(double[] sorted, double p) {
        return of(sorted, p, TYPE);
    }

    /** Returns the median of ascending values; of an even number, the mean of the middle two. */
    public static double median(double[] sorted) {
        return of(sorted, 0.5, TYPE);
    }

    /**
     * Returns the quantile of ascending values.
     *
     * @param sorted ascending, without {@code NaN}
     * @param p share of the values below, 0 to 1
     * @param type Hyndman and Fan's number, 1 to 9
     * @throws IllegalArgumentException if {@code p} or {@code type} is out of range or the last value is {@code NaN}
     */
    public static double of(double[] sorted, double p, int type) {
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
        double position = n * p + shift(type, p);
        double j = StrictMath.floor(position + FUZZ * n);
        double g = position - j;
        double weight = weight(type, StrictMath.abs(g) <= FUZZ * n ? 0 : g, j);
        double low = sorted[(int) clamp(j - 1, n)];
        double high = sorted[(int) clamp(j, n)];
        return weight == 0 || low == high ? low : weight == 1 ? high : (1 - weight) * low + weight * high;
    }

    private static double shift(int type, double p) {
        return switch (type) {
            case 1, 2, 4 -> 0;
            case 3 -> -0.5;
            case 5 -> 0.5;
            case 6 -> p;
            case 7 -> 1 - p;
            case 8 -> (p + 1) / 3;
            case 9 -> p / 4 + 0.375;
            default -> throw new IllegalArgumentException("quantile types are 1 to 9, found " + type);
        };
    }

    private static double weight(int type, double g, double j) {
        return switch (type) {
            case 1 -> g == 0 ? 0 : 1;
            case 2 -> g == 0 ? 0.5 : 1;
            case 3 -> g == 0 && j % 2 == 0 ? 0 : 1;
            default -> g;
        };
    }

    private static double clamp(double index, int n) {
        return StrictMath.max(0, StrictMath.min(n - 1, index));
    }
}
