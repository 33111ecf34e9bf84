package benchtrue.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** The standard normal distribution. {@code NaN} in gives {@code NaN} out. */
public final class Normal {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    private static final double ROOT_TWO_PI = StrictMath.sqrt(2 * StrictMath.PI);
    /** Beyond this the tail underflows; the hazard's expansion is then exact to the last bit. */
    private static final double FAR = 30;

    private Normal() {}

    public static double density(double z) {
        return StrictMath.exp(-z * z / 2) / ROOT_TWO_PI;
    }

    /** Returns P(Z &le; z). */
    public static double lowerTail(double z) {
        return STANDARD.cumulativeProbability(z);
    }

    /** Returns P(Z &gt; z), without cancellation for large {@code z}. */
    public static double upperTail(double z) {
        return STANDARD.survivalProbability(z);
    }

    /**
     * Returns the point with {@code p} of the distribution below it; infinite at 0 and 1.
     *
     * @throws IllegalArgumentException if {@code p} is outside 0 to 1
     */
    public static double quantile(double p) {
        return Double.isNaN(p) ? p : STANDARD.inverseCumulativeProbability(p);
    }

    /** Returns density over upper tail, E[Z | Z &gt; z] (the inverse Mills ratio); safe for any finite {@code z}. */
    public static double hazard(double z) {
        if (z < FAR) {
            return density(z) / upperTail(z);
        }
        double s = 1 / (z * z);
        return z / (1 - s * (1 - s * (3 - s * (15 - s * (105 - 945 * s)))));
    }

    /** Returns ln P(Z &gt; z); safe for any finite {@code z}. */
    public static double logUpperTail(double z) {
        return z < FAR
                ? StrictMath.log(upperTail(z))
                : -z * z / 2 - StrictMath.log(ROOT_TWO_PI) - StrictMath.log(hazard(z));
    }
}
