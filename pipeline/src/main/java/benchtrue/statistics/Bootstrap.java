package benchtrue.statistics;

import java.util.Arrays;

/**
 * Percentile and bias-corrected accelerated (BCa) bootstrap intervals and one-sided p-values (Efron 1987, JASA 82, 171-185; Davison,
 * Hinkley 1997, chapter 5) from given replicates.
 *
 * <p>With z0 = &Phi;&#8315;&sup1;(share of replicates below the estimate) and acceleration a, the end at level &alpha; is the quantile at
 * &Phi;(z0 + (z0 + z&alpha;) / (1 &minus; a (z0 + z&alpha;))). Shares count ties half and are (count + &frac12;) / (B + 1), so they are never 0 or 1;
 * quantiles of replicates are Hyndman and Fan's type 6, at rank (B + 1) p. {@code NaN} replicates (a resample without the subject)
 * are left out: see {@link #usable()}. Fewer than two usable ones, or a {@code NaN} estimate, give {@code NaN}. BCa of a median is
 * unsafe in small samples. O(B log B) once, O(log B) a question.
 */
public final class Bootstrap {
    private static final int TYPE = 6;

    private final double[] replicates;
    private final double biasCorrection;
    private final double acceleration;

    private Bootstrap(double[] replicates, double biasCorrection, double acceleration) {
        this.replicates = replicates;
        this.biasCorrection = biasCorrection;
        this.acceleration = acceleration;
    }

    /**
     * Returns the bootstrap of an estimate.
     *
     * @param estimate from the whole sample
     * @param replicates one a resample, in any order
     * @param acceleration a, see {@link Jackknife#acceleration()}; 0 gives the bias-corrected interval
     */
    public static Bootstrap of(double estimate, double[] replicates, double acceleration) {
        double[] usable =
                Arrays.stream(replicates).filter(v -> !Double.isNaN(v)).sorted().toArray();
        if (usable.length < 2 || Double.isNaN(estimate)) {
            return new Bootstrap(new double[0], Double.NaN, acceleration);
        }
        return new Bootstrap(usable, Normal.quantile(share(usable, estimate)), acceleration);
    }

    /** Returns how many replicates entered; all of them unless some were {@code NaN}. */
    int usable() {
        return replicates.length;
    }

    /** Returns z0, in standard deviations. */
    double biasCorrection() {
        return biasCorrection;
    }

    /** Returns the standard deviation of the replicates. */
    double standardError() {
        return Moments.of(replicates).standardDeviation();
    }

    /** Returns the percentile interval. */
    Interval percentile(double level) {
        double tail = Interval.lowerTail(level);
        return new Interval(Quantile.of(replicates, tail, TYPE), Quantile.of(replicates, 1 - tail, TYPE));
    }

    /** Returns the BCa interval. */
    Interval bca(double level) {
        double tail = Interval.lowerTail(level);
        if (Double.isNaN(biasCorrection + acceleration)) {
            return Interval.NONE;
        }
        return new Interval(
                Quantile.of(replicates, bcaLevel(biasCorrection, acceleration, tail), TYPE),
                Quantile.of(replicates, bcaLevel(biasCorrection, acceleration, 1 - tail), TYPE));
    }

    /** Returns the percentile p-value against "no more than {@code bound}": small means surely above. */
    double percentileChanceAtMost(double bound) {
        return share(replicates, bound);
    }

    /** Returns the percentile p-value against "no less than {@code bound}": small means surely below. */
    public double percentileChanceAtLeast(double bound) {
        return 1 - share(replicates, bound);
    }

    /** Returns the BCa p-value against "no more than {@code bound}": the level whose lower end is the bound. */
    double bcaChanceAtMost(double bound) {
        return Normal.lowerTail(bcaPoint(bound));
    }

    /** Returns the BCa p-value against "no less than {@code bound}": the level whose upper end is the bound. */
    public double bcaChanceAtLeast(double bound) {
        return Normal.upperTail(bcaPoint(bound));
    }

    /** Returns the level at which BCa reads the replicates for nominal level {@code alpha}. */
    static double bcaLevel(double z0, double a, double alpha) {
        double u = z0 + Normal.quantile(alpha);
        double slope = 1 - a * u;
        // Beyond the pole of the acceleration the interval has no end; the extreme replicate is all there is to give.
        return slope > 0 ? Normal.lowerTail(z0 + u / slope) : u > 0 ? 1 : 0;
    }

    private double bcaPoint(double bound) {
        double w = Normal.quantile(share(replicates, bound)) - biasCorrection;
        double slope = 1 + acceleration * w;
        if (slope <= 0) {
            return w > 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        }
        return w / slope - biasCorrection;
    }

    private static double share(double[] sorted, double x) {
        int b = sorted.length;
        if (b == 0) {
            return Double.NaN;
        }
        return ((below(sorted, x) + below(sorted, Math.nextUp(x))) / 2.0 + 0.5) / (b + 1);
    }

    private static int below(double[] sorted, double x) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] < x) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
