package benchtrue.statistics;

import java.util.stream.IntStream;

/**
 * A linear model with an intercept, fixed columns and any number of crossed or nested random intercepts, fitted by restricted
 * maximum likelihood: y = b0 + xb + &Sigma; b(factor, level) + e.
 *
 * <p>Henderson's mixed-model equations (1975) over a criterion profiled as in Bates, M&auml;chler, Bolker, Walker (2015), with which
 * criterion, estimates and conditional deviations agree. The equations are built once from cross-counts; a million rows cost a second
 * of counting, each step of the search only depends on the number of levels. Weights divide the residual variance of a row.
 *
 * <p>No row: everything {@code NaN}, effects 0. No more rows than fixed effects: no variances. Factors that can't be told from fixed effects
 * (one technician alone) or from the residual (a level for every row) get variance 0, as does a factor that adds nothing. A column
 * that others explain gets {@code NaN} and no part in predictions. If y has no residual at all, every variance is 0.
 */
public final class CrossedEffects {
    private static final int ROBUST_STEPS = 50;
    private static final double ROBUST_TOLERANCE = 1e-6;

    private final double[] y;
    private final double[][] columns;
    private final double[] weights;
    private final Henderson equations;
    private final double residualVariance;
    private final double[] fixed;
    private final double[][] effects;
    private double[] residuals;
    private Uncertainty uncertainty;

    private CrossedEffects(double[] y, double[][] columns, double[] weights, Henderson equations, double variance) {
        this.y = y;
        this.columns = columns;
        this.weights = weights;
        this.equations = equations;
        this.residualVariance = variance;
        MixedRows rows = equations.rows;
        effects = new double[rows.factors.length][];
        for (int f = 0; f < effects.length; f++) {
            effects[f] = new double[rows.factors[f].levels()];
            for (int level = 0; level < effects[f].length; level++) {
                effects[f][level] = equations.effect(f, level);
            }
        }
        fixed = new double[columns.length + 1];
        fixed[0] = rows.means[columns.length] + equations.dense(rows.effects);
        for (int j = 0; j < columns.length; j++) {
            fixed[j + 1] = equations.dense(rows.effects + 1 + j);
            fixed[0] -= rows.means[j] * fixed[j + 1];
        }
    }

    /**
     * Returns the fit.
     *
     * @param y response, one a row
     * @param columns one array a covariate, without the intercept
     * @param weights at least 0, one a row; 0 leaves a row out
     * @param factors groupings of the rows, each a random intercept
     * @throws IllegalArgumentException if lengths differ, a number is not finite, a weight is negative, or the factors but the
     *     largest have more than about 8,000 levels in all
     */
    public static CrossedEffects fit(double[] y, double[][] columns, double[] weights, Factor... factors) {
        check(y, columns, weights, factors);
        CrossCounts counts = new CrossCounts(new MixedRows(y, columns, factors, weights));
        Henderson best = RatioSearch.best(counts);
        return new CrossedEffects(y, columns, weights, best, best.residualVariance());
    }

    private static void check(double[] y, double[][] columns, double[] weights, Factor[] factors) {
        finite("response", y, y.length);
        checkWeights(weights, y.length);
        for (double[] column : columns) {
            finite("column", column, y.length);
        }
        for (Factor factor : factors) {
            if (factor.level().length != y.length) {
                throw new IllegalArgumentException(
                        "a factor has " + factor.level().length + " rows, expected " + y.length);
            }
        }
    }

    private static void checkWeights(double[] weights, int rows) {
        finite("weights", weights, rows);
        for (double weight : weights) {
            if (weight < 0) {
                throw new IllegalArgumentException("a weight must be at least 0, found " + weight);
            }
        }
    }

    private static void finite(String name, double[] values, int length) {
        if (values.length != length) {
            throw new IllegalArgumentException(name + " has " + values.length + " rows, expected " + length);
        }
        for (int i = 0; i < length; i++) {
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException(name + " at row " + i + " is " + values[i]);
            }
        }
    }

    /**
     * Returns the fit with its effects made robust: Huber weights (1964) from the residuals, in scales of 1.4826 times their median
     * absolute value, iterated at this fit's variances, which stay as they are, until no residual moves by more than 1e-6 scales.
     *
     * @param k where the weights begin to fall, {@link Huber#K}
     */
    public CrossedEffects robust(double k) {
        return robust(k, ROBUST_STEPS);
    }

    CrossedEffects robust(double k, int steps) {
        CrossedEffects fit = this;
        for (int step = 0; step < steps; step++) {
            double[] before = fit.residuals();
            double scale = Mad.NORMAL * Mad.about(counted(before), 0);
            if (!(scale > 0)) {
                break;
            }
            double[] next = weights.clone();
            for (int i = 0; i < next.length; i++) {
                next[i] *= Huber.weight(before[i] / scale, k);
            }
            fit = weighted(next);
            if (Huber.largestMove(before, fit.residuals()) <= ROBUST_TOLERANCE * scale) {
                break;
            }
        }
        return fit;
    }

    /** Returns the values of the rows that have weight. */
    private double[] counted(double[] values) {
        return IntStream.range(0, values.length)
                .filter(row -> weights[row] > 0)
                .mapToDouble(row -> values[row])
                .toArray();
    }

    /**
     * Returns the effects for another response and other weights at this fit's variances, which stay as they are.
     *
     * @param response one a row
     * @param rowWeights at least 0, one a row
     * @throws IllegalArgumentException as {@link #fit} does
     */
    public CrossedEffects refit(double[] response, double[] rowWeights) {
        check(response, columns, rowWeights, equations.rows.factors);
        CrossCounts counts = new CrossCounts(equations.rows.with(response, rowWeights));
        return new CrossedEffects(
                response, columns, rowWeights, new Henderson(counts, equations.theta), residualVariance);
    }

    private CrossedEffects weighted(double[] next) {
        CrossCounts counts = new CrossCounts(equations.rows.with(y, next));
        return new CrossedEffects(y, columns, next, new Henderson(counts, equations.theta), residualVariance);
    }

    /** Returns the REML criterion, minus twice the restricted log-likelihood; of a robust fit, that of its weighted rows. */
    double criterion() {
        return equations.value();
    }

    /** Returns the residual variance of a row of weight 1. */
    public double residualVariance() {
        return residualVariance;
    }

    /** Returns the variance of a factor's effects. */
    double variance(int factor) {
        double ratio = equations.theta[factor];
        return ratio == 0 ? 0 : ratio * ratio * residualVariance;
    }

    /** Returns the intercept (0) or the coefficient of column {@code index} &minus; 1; {@code NaN} where aliased. */
    public double coefficient(int index) {
        return aliased(index) ? Double.NaN : fixed[index];
    }

    /** Returns the standard error of {@link #coefficient}. */
    public double error(int index) {
        MixedRows rows = equations.rows;
        double[] v = new double[rows.size];
        v[rows.effects + index] = 1;
        for (int j = 0; index == 0 && j < columns.length; j++) {
            v[rows.effects + 1 + j] = aliased(j + 1) ? 0 : -rows.means[j];
        }
        return aliased(index) ? Double.NaN : deviation(uncertainty().combination(v, -1, 0));
    }

    /** Kept; the steps of a robust fit never ask. Two threads may reckon it, to the same numbers. */
    private Uncertainty uncertainty() {
        Uncertainty known = uncertainty;
        if (known == null) {
            known = new Uncertainty(equations);
            uncertainty = known;
        }
        return known;
    }

    private boolean aliased(int index) {
        return equations.counts.aliased[equations.rows.effects + index];
    }

    private double deviation(double relativeVariance) {
        return StrictMath.sqrt(relativeVariance * residualVariance);
    }

    /** Returns a level's effect, its best linear unbiased predictor; 0 for a level without rows. */
    public double effect(int factor, int level) {
        return effects[factor][level];
    }

    /**
     * Returns the expected y of a row: intercept, columns and the named levels' effects.
     *
     * @param x the columns' values
     * @param levels one a factor; -1 stands for an average level
     */
    public double predict(double[] x, int[] levels) {
        double sum = fixed[0];
        for (int j = 0; j < x.length; j++) {
            sum += fixed[j + 1] * x[j];
        }
        for (int f = 0; f < levels.length; f++) {
            sum += levels[f] < 0 ? 0 : effects[f][levels[f]];
        }
        return sum;
    }

    /** Returns the standard error of {@link #predict}, as a prediction of the true expectation of such rows. */
    public double predictError(double[] x, int[] levels) {
        return error(1, x, levels);
    }

    /** Returns by how much the expected y of a row stands off that of one with 0 in all columns and average levels. */
    public double contrast(double[] x, int[] levels) {
        return predict(x, levels) - fixed[0];
    }

    /** Returns the standard error of {@link #contrast}. */
    public double contrastError(double[] x, int[] levels) {
        return error(0, x, levels);
    }

    private double error(double intercept, double[] x, int[] levels) {
        MixedRows rows = equations.rows;
        double[] v = new double[rows.size];
        v[rows.effects] = intercept;
        for (int j = 0; j < x.length; j++) {
            v[rows.effects + 1 + j] = aliased(j + 1) ? 0 : x[j] - intercept * rows.means[j];
        }
        int aside = -1;
        double amount = 0;
        for (int f = 0; f < levels.length; f++) {
            if (levels[f] >= 0 && f == rows.aside) {
                aside = levels[f];
                amount = equations.theta[f];
            } else if (levels[f] >= 0) {
                v[rows.start[f] + levels[f]] = equations.theta[f];
            }
        }
        return deviation(uncertainty().combination(v, aside, amount));
    }

    /** Returns y minus its expectation given all effects, one a row. */
    public double[] residuals() {
        return residuals == null ? reckonResiduals() : residuals.clone();
    }

    /** Kept, since a robust fit asks for them before and after each step. */
    private double[] reckonResiduals() {
        MixedRows rows = equations.rows;
        double[] reckoned = y.clone();
        for (int i = 0; i < y.length; i++) {
            reckoned[i] -= fixed[0];
            for (int at = rows.nonzeros.from[i]; at < rows.nonzeros.from[i + 1]; at++) {
                reckoned[i] -= fixed[rows.nonzeros.column[at] + 1] * rows.nonzeros.value[at];
            }
            for (int f = 0; f < effects.length; f++) {
                int level = rows.factors[f].level()[i];
                reckoned[i] -= level < 0 ? 0 : effects[f][level];
            }
        }
        residuals = reckoned;
        return reckoned.clone();
    }

    /** Returns a row's weight: as given, times its Huber weight in a robust fit. */
    public double weight(int row) {
        return weights[row];
    }
}
