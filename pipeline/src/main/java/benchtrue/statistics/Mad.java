package benchtrue.statistics;

/**
 * Median absolute deviation from the median (Hampel 1974): a scatter that a few wild jobs can't move. Medians of an even number
 * are the mean of the middle two. Empty input gives {@code NaN}, one value 0. O(n log n).
 */
public final class Mad {
    /** Makes the deviation of normal data estimate their standard deviation; R's constant, 1 / quantile(0.75) rounded. */
    public static final double NORMAL = 1.4826;

    private Mad() {}

    /** Returns the bare median absolute deviation of {@code values}, in any order. */
    public static double raw(double[] values) {
        return about(values, Quantile.median(Quantile.sorted(values)));
    }

    /** Returns {@link #raw} times {@link #NORMAL}. */
    public static double scaled(double[] values) {
        return NORMAL * raw(values);
    }

    /** Returns the median absolute deviation from a given centre; for residuals, from 0. */
    public static double about(double[] values, double centre) {
        double[] deviations = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            deviations[i] = StrictMath.abs(values[i] - centre);
        }
        return Quantile.median(Quantile.sorted(deviations));
    }
}
