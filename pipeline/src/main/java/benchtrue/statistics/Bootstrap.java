package benchtrue.statistics;

import java.util.Arrays;

/**
 * Bias-corrected accelerated (BCa) one-sided bootstrap p-values (Efron 1987, JASA 82, 171-185; Davison, Hinkley
 * 1997, chapter 5) from given replicates.
 *
 * <p>With z0 = &Phi;&#8315;&sup1;(share of replicates below the estimate) and acceleration a, the interval's end at level &alpha; is the
 * replicates' quantile at &Phi;(z0 + (z0 + z&alpha;) / (1 &minus; a (z0 + z&alpha;))); a p-value is the level whose end is the bound. Shares
 * count ties half and are (count + &frac12;) / (B + 1), so they are never 0 or 1. {@code NaN} replicates (a resample without the subject)
 * are left out. Fewer than two others, or a {@code NaN} estimate, give {@code NaN}. O(B log B) once, O(log B) a question.
 */
public final class Bootstrap {
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
     * @param acceleration a, see {@link Jackknife#acceleration()}
     */
    public static Bootstrap of(double estimate, double[] replicates, double acceleration) {
        double[] usable =
                Arrays.stream(replicates).filter(v -> !Double.isNaN(v)).sorted().toArray();
        if (usable.length < 2 || Double.isNaN(estimate)) {
            return new Bootstrap(new double[0], Double.NaN, acceleration);
        }
        return new Bootstrap(usable, Normal.quantile(share(usable, estimate)), acceleration);
    }

    /** Returns the BCa p-value against "no less than {@code bound}": the level whose upper end is the bound; small means surely below. */
    public double bcaChanceAtLeast(double bound) {
        return Normal.upperTail(bcaPoint(bound));
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
