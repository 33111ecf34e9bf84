package benchtrue.statistics;

import java.util.Arrays;

/** A ratio of two sums over the same jobs, such as hours taken over hours quoted. */
public final class RatioOfSums {
    private RatioOfSums() {}

    /**
     * Returns the standard error of ln of the ratio, from what each job takes beyond it (Cochran 1977, Sampling Techniques, section
     * 6.4, without the finite population); 0 where all jobs have the same ratio, {@code NaN} for fewer than two.
     *
     * @param taken upper part of the ratio by job, with a sum above 0
     * @param quoted lower part by job, as many
     */
    public static double logError(double[] taken, double[] quoted) {
        double all = Arrays.stream(taken).sum();
        double ratio = all / Arrays.stream(quoted).sum();
        double squares = 0;
        for (int i = 0; i < taken.length; i++) {
            double off = taken[i] - ratio * quoted[i];
            squares += off * off;
        }
        return StrictMath.sqrt(squares * taken.length / (taken.length - 1.0)) / all;
    }
}
