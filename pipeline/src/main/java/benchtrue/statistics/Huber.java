package benchtrue.statistics;

/**
 * Huber's weights (Huber 1964, 1973): squared loss up to {@code k} scales, absolute beyond, so that one wild job can't carry an
 * average.
 */
public final class Huber {
    /** Keeps 95 % efficiency on normal data. */
    public static final double K = 1.345;

    private Huber() {}

    /** Returns the weight of a residual, min(1, k/|z|), given in scales. */
    public static double weight(double standardised, double k) {
        double size = StrictMath.abs(standardised);
        return size <= k ? 1 : k / size;
    }

    static double largestMove(double[] before, double[] after) {
        double most = 0;
        for (int i = 0; i < before.length; i++) {
            most = StrictMath.max(most, StrictMath.abs(after[i] - before[i]));
        }
        return most;
    }
}
