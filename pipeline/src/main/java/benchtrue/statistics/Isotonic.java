package benchtrue.statistics;

import java.util.Arrays;

/**
 * Least squares under a monotone order: pool adjacent violators (Ayer, Brunk, Ewing, Reid, Silverman 1955, Annals of Mathematical
 * Statistics 26, 641-647).
 */
public final class Isotonic {
    private Isotonic() {}

    /** Which way values may go. */
    public enum Way {
        /** Never down. */
        RISING(1),
        /** Never up. */
        FALLING(-1);

        private final double sign;

        Way(double sign) {
            this.sign = sign;
        }
    }

    /**
     * Returns the nearest values in order.
     *
     * @param values one a place
     * @param weights above 0, one a place
     */
    public static double[] fit(double[] values, double[] weights, Way way) {
        double[] mean = new double[values.length];
        double[] weight = new double[values.length];
        int[] ends = new int[values.length];
        int blocks = 0;
        for (int place = 0; place < values.length; place++) {
            mean[blocks] = values[place];
            weight[blocks] = weights[place];
            ends[blocks++] = place + 1;
            while (blocks > 1 && way.sign * (mean[blocks - 2] - mean[blocks - 1]) > 0) {
                blocks--;
                double both = weight[blocks - 1] + weight[blocks];
                mean[blocks - 1] = (weight[blocks - 1] * mean[blocks - 1] + weight[blocks] * mean[blocks]) / both;
                weight[blocks - 1] = both;
                ends[blocks - 1] = ends[blocks];
            }
        }
        double[] fitted = new double[values.length];
        int from = 0;
        for (int block = 0; block < blocks; block++) {
            Arrays.fill(fitted, from, ends[block], mean[block]);
            from = ends[block];
        }
        return fitted;
    }
}
