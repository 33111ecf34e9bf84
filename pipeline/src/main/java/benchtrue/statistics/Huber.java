package benchtrue.statistics;

import java.util.Arrays;

/**
 * Huber's M-estimates of location and regression (Huber 1964, 1973): squared loss up to {@code k} scales, absolute beyond, so
 * that one wild job can't carry an average. Scale is the median absolute deviation times 1.4826; of residuals about 0, taken anew at
 * each step (iterated reweighted least squares, Holland, Welsch 1977).
 */
public final class Huber {
    /** Keeps 95 % efficiency on normal data. */
    public static final double K = 1.345;

    private static final int STEPS = 200;
    private static final double TOLERANCE = 1e-10;

    private Huber() {}

    /** Returns the weight of a residual, min(1, k/|z|), given in scales. */
    public static double weight(double standardised, double k) {
        double size = StrictMath.abs(standardised);
        return size <= k ? 1 : k / size;
    }

    /**
     * Returns what the Huber-weighted mean of squared residuals settles at for normal data of variance 1, when weights and variance
     * are iterated together: s&sup2; = 2&Phi;(k s) &minus; 1, which is 0.759 for k = 1.345. Divide a weighted variance by it.
     */
    public static double weightedVariance(double k) {
        double variance = 1;
        for (int step = 0; step < STEPS; step++) {
            variance = 1 - 2 * Normal.upperTail(k * StrictMath.sqrt(variance));
        }
        return variance;
    }

    /**
     * Returns the location of {@code values}: {@code NaN} for none, the value for one; the median where half of the values are
     * equal.
     */
    public static double location(double[] values, double k) {
        double[] sorted = Quantile.sorted(values);
        double centre = Quantile.median(sorted);
        double reach = k * Mad.scaled(values);
        for (int step = 0; step < STEPS; step++) {
            double sum = 0;
            for (double value : sorted) {
                sum += StrictMath.max(centre - reach, StrictMath.min(centre + reach, value));
            }
            centre = sum / sorted.length;
        }
        return centre;
    }

    /**
     * Returns the robust fit of {@code y} on an intercept and {@code columns}. Stops when no residual moves by more than 1e-10
     * scales, at the latest after 200 steps; a scale of 0 (more than half of the rows fit exactly) ends at the fit so far.
     */
    public static Fit regression(double[] y, double[][] columns, double k) {
        return regression(y, columns, k, STEPS);
    }

    static Fit regression(double[] y, double[][] columns, double k, int steps) {
        double[] weights = new double[y.length];
        Arrays.fill(weights, 1);
        LeastSquares fit = LeastSquares.fit(y, columns, weights);
        double scale = scale(fit);
        for (int step = 0; step < steps && scale > 0; step++) {
            double[] before = fit.residuals();
            for (int i = 0; i < y.length; i++) {
                weights[i] = weight(before[i] / scale, k);
            }
            fit = LeastSquares.fit(y, columns, weights);
            if (largestMove(before, fit.residuals()) <= TOLERANCE * scale) {
                break;
            }
            scale = scale(fit);
        }
        return new Fit(fit, scale, weights);
    }

    private static double scale(LeastSquares fit) {
        return Mad.NORMAL * Mad.about(fit.residuals(), 0);
    }

    static double largestMove(double[] before, double[] after) {
        double most = 0;
        for (int i = 0; i < before.length; i++) {
            most = StrictMath.max(most, StrictMath.abs(after[i] - before[i]));
        }
        return most;
    }

    /** A robust regression: the weighted fit it settled at, the residual scale, and each row's weight. */
    public static final class Fit {
        private final LeastSquares fit;
        private final double scale;
        private final double[] weights;

        private Fit(LeastSquares fit, double scale, double[] weights) {
            this.fit = fit;
            this.scale = scale;
            this.weights = weights;
        }

        /** Returns the intercept (0) or the coefficient of column {@code index} &minus; 1; {@code NaN} where aliased. */
        public double coefficient(int index) {
            return fit.coefficient(index);
        }

        /** Returns the residual scale, comparable to a standard deviation. */
        public double scale() {
            return scale;
        }

        /** Returns the weight of a row, 0 to 1. */
        public double weight(int row) {
            return weights[row];
        }

        /** Returns how many rows were weighted down. */
        public int downWeighted() {
            return (int) Arrays.stream(weights).filter(w -> w < 1).count();
        }
    }
}
