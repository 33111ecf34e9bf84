package benchtrue.statistics;

import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Student's t distribution (Student 1908). Degrees of freedom may be fractional; infinity is the normal distribution. Zero,
 * negative or {@code NaN} degrees of freedom give {@code NaN}: one job says nothing about scatter.
 */
public final class StudentT {
    private StudentT() {}

    /** Returns P(T &le; t). */
    public static double lowerTail(double t, double degreesOfFreedom) {
        return upperTail(-t, degreesOfFreedom);
    }

    /** Returns P(T &gt; t), without cancellation for large {@code t}. */
    public static double upperTail(double t, double degreesOfFreedom) {
        return degreesOfFreedom > 0 ? TDistribution.of(degreesOfFreedom).survivalProbability(t) : Double.NaN;
    }

    /**
     * Returns the point with {@code p} of the distribution below it; infinite at 0 and 1.
     *
     * @throws IllegalArgumentException if {@code p} is outside 0 to 1
     */
    public static double quantile(double p, double degreesOfFreedom) {
        return degreesOfFreedom > 0 && !Double.isNaN(p)
                ? TDistribution.of(degreesOfFreedom).inverseCumulativeProbability(p)
                : Double.NaN;
    }
}
