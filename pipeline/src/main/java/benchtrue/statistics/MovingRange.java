package benchtrue.statistics;

/**
 * Centre and scatter of single values in order, the scatter from the mean range between neighbours (NIST/SEMATECH e-Handbook
 * 6.3.2.2): a shift of level half-way does not inflate it as it does a standard deviation. Fewer than two values give {@code NaN}.
 *
 * @param mean of the values
 * @param meanRange mean absolute difference of neighbours
 */
public record MovingRange(double mean, double meanRange) {
    /** Expected range of two standard normal values, d2(2). */
    public static final double D2 = 1.128;
    /** Upper limit of a range of two, in mean ranges, D4(2). */
    public static final double D4 = 3.267;

    private static final double SIGMAS = 3;

    /** Returns centre and mean range of values in order. */
    public static MovingRange of(double[] values) {
        double[] ranges = new double[StrictMath.max(0, values.length - 1)];
        for (int i = 0; i < ranges.length; i++) {
            ranges[i] = StrictMath.abs(values[i + 1] - values[i]);
        }
        return new MovingRange(Moments.of(values).mean(), Moments.of(ranges).mean());
    }

    /** Returns the standard deviation that the ranges imply. */
    public double sigma() {
        return meanRange / D2;
    }

    /** Returns the three-sigma limits of single values. */
    public Interval limits() {
        return new Interval(mean - SIGMAS * sigma(), mean + SIGMAS * sigma());
    }

    /** Returns the upper limit of a single range. */
    public double rangeLimit() {
        return D4 * meanRange;
    }
}
