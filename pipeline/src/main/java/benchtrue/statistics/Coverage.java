package benchtrue.statistics;

import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * The share of jobs that fit their quote, with the exact interval of Clopper and Pearson (1934). Never narrower than its level; the
 * lower end is 0 when none fits, the upper 1 when all do. No job gives {@code NaN}.
 *
 * @param share jobs that fit over jobs
 * @param interval two-sided
 */
public record Coverage(double share, Interval interval) {

    /**
     * Returns the coverage of {@code jobs} of which {@code fitting} took no longer than quoted.
     *
     * @throws IllegalArgumentException if {@code fitting} is not between 0 and {@code jobs}
     */
    public static Coverage of(int fitting, int jobs, double level) {
        if (fitting < 0 || fitting > jobs) {
            throw new IllegalArgumentException(fitting + " of " + jobs + " jobs can't fit");
        }
        double tail = Interval.lowerTail(level);
        if (jobs == 0) {
            return new Coverage(Double.NaN, Interval.NONE);
        }
        double low = fitting == 0 ? 0 : beta(fitting, jobs - fitting + 1.0, tail);
        double high = fitting == jobs ? 1 : beta(fitting + 1.0, jobs - fitting, 1 - tail);
        return new Coverage((double) fitting / jobs, new Interval(low, high));
    }

    private static double beta(double alpha, double beta, double p) {
        return BetaDistribution.of(alpha, beta).inverseCumulativeProbability(p);
    }
}
