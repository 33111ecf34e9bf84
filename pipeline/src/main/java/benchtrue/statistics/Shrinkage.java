package benchtrue.statistics;

import java.util.Arrays;

/**
 * Partial pooling of independent estimates with known variances: y(i) ~ N(&theta;(i), v(i)), &theta;(i) ~ N(&mu;, &tau;&sup2;). Each estimate
 * leans on the pooled mean by the factor v / (v + &tau;&sup2;).
 *
 * <p>Estimates that are {@code NaN}, or whose variance is {@code NaN} or infinite, know nothing: they stay out of the pool and
 * lean wholly on it. One informative estimate gives &tau;&sup2; = 0; none gives {@code NaN}. The error of &tau;&sup2; itself is not
 * carried into the errors.
 */
public final class Shrinkage {
    private static final int STEPS = 200;

    private final double[] estimates;
    private final double[] variances;
    private final double between;
    private final Pool pool;
    private final double q;

    private Shrinkage(double[] estimates, double[] variances, double between, double q) {
        this.estimates = estimates;
        this.variances = variances;
        this.between = between;
        this.pool = Pool.of(estimates, variances, between);
        this.q = q;
    }

    /**
     * Returns the fit with the moment estimate of DerSimonian and Laird (1986): &tau;&sup2; = max(0, (Q &minus; (k &minus; 1)) / (&Sigma;w
     * &minus; &Sigma;w&sup2;/&Sigma;w)) with w = 1/v.
     *
     * @throws IllegalArgumentException if a variance is zero or negative: give a floor first
     */
    public static Shrinkage derSimonianLaird(double[] estimates, double[] variances) {
        double[] v = checked(estimates, variances);
        Pool fixed = Pool.of(estimates, v, 0);
        double c = fixed.weight - fixed.squaredWeight / fixed.weight;
        double between = fixed.count > 1 ? StrictMath.max(0, (fixed.q - (fixed.count - 1)) / c) : 0;
        return new Shrinkage(estimates.clone(), v, between, fixed.q);
    }

    /**
     * Returns the fit with the estimate of Paule and Mandel (1982): the &tau;&sup2; at which the weighted sum of squares equals its
     * expectation k &minus; 1, by Newton's method from 0, which can't overshoot (DerSimonian, Kacker 2007).
     *
     * @throws IllegalArgumentException if a variance is zero or negative: give a floor first
     */
    public static Shrinkage pauleMandel(double[] estimates, double[] variances) {
        double[] v = checked(estimates, variances);
        double q = Pool.of(estimates, v, 0).q;
        double between = 0;
        for (int step = 0; step < STEPS; step++) {
            Pool pool = Pool.of(estimates, v, between);
            double excess = pool.q - (pool.count - 1);
            if (!(excess > 0)) {
                break;
            }
            between += excess / pool.slope;
        }
        return new Shrinkage(estimates.clone(), v, between, q);
    }

    private static double[] checked(double[] estimates, double[] variances) {
        double[] v = variances.clone();
        for (int i = 0; i < v.length; i++) {
            if (v[i] <= 0) {
                throw new IllegalArgumentException("variance " + i + " must be positive, found " + v[i]);
            }
            v[i] = Double.isNaN(v[i] + estimates[i]) ? Double.POSITIVE_INFINITY : v[i];
        }
        return v;
    }

    /** Returns how many estimates entered the pool. */
    public int count() {
        return pool.count;
    }

    /** Returns &mu;, the pooled mean. */
    public double mean() {
        return pool.mean;
    }

    /** Returns the standard error of the pooled mean. */
    public double meanError() {
        return StrictMath.sqrt(1 / pool.weight);
    }

    /** Returns &tau;&sup2;, the variance between the true values. */
    public double between() {
        return between;
    }

    /** Returns Cochran's Q, the weighted sum of squares about the fixed-effect mean; chi-square with count &minus; 1 if all are equal. */
    public double heterogeneity() {
        return q;
    }

    /** Returns how far an estimate leans on the pool: 0 stands alone, 1 leans wholly. */
    public double lean(int index) {
        double v = variances[index];
        return Double.isInfinite(v) ? 1 : v / (v + between);
    }

    /** Returns an estimate after leaning on the pool (its best linear unbiased predictor). */
    public double shrunk(int index) {
        double lean = lean(index);
        return lean == 1 ? pool.mean : lean * pool.mean + (1 - lean) * estimates[index];
    }

    /** Returns the standard error of {@link #shrunk}, with the pooled mean's own error. */
    public double error(int index) {
        double lean = lean(index);
        return StrictMath.sqrt(lean * between + lean * lean / pool.weight);
    }

    /** Weighted sums over the informative estimates at one value of between. */
    private record Pool(int count, double weight, double squaredWeight, double mean, double q, double slope) {

        static Pool of(double[] estimates, double[] variances, double between) {
            double[] w = Arrays.stream(variances).map(v -> 1 / (v + between)).toArray();
            int count = 0;
            double weight = 0;
            double squared = 0;
            double sum = 0;
            for (int i = 0; i < w.length; i++) {
                if (w[i] > 0) {
                    count++;
                    weight += w[i];
                    squared += w[i] * w[i];
                    sum += w[i] * estimates[i];
                }
            }
            double mean = sum / weight;
            double q = 0;
            double slope = 0;
            for (int i = 0; i < w.length; i++) {
                if (w[i] > 0) {
                    double d = estimates[i] - mean;
                    q += w[i] * d * d;
                    slope += w[i] * w[i] * d * d;
                }
            }
            return new Pool(count, weight, squared, mean, q, slope);
        }
    }
}
