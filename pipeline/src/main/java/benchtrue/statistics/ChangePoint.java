package benchtrue.statistics;

/**
 * Where a single change of level most probably began, from the sums S(i) of the values' deviations from their mean (Page 1954; Hinkley
 * 1970). Index of the first value after the change; -1 for fewer than two values or when nothing varies; the earliest of ties. {@code NaN} is refused. O(n).
 */
public final class ChangePoint {
    private ChangePoint() {}

    /**
     * Returns the point after the largest |S(i)| / sqrt(i (n &minus; i) / n): the maximum-likelihood estimate for normal values with one
     * shift of the mean (Hinkley 1970).
     */
    public static int byLikelihood(double[] values) {
        int n = values.length;
        double mean = Moments.of(values).mean();
        if (n > 0 && Double.isNaN(mean)) {
            throw new IllegalArgumentException("a change point needs values without NaN");
        }
        int point = -1;
        double most = n * Math.ulp(mean);
        double sum = 0;
        for (int i = 1; i < n; i++) {
            sum += values[i - 1] - mean;
            double size = StrictMath.abs(sum) / StrictMath.sqrt((double) i * (n - (double) i) / n);
            if (size > most) {
                most = size;
                point = i;
            }
        }
        return point;
    }
}
