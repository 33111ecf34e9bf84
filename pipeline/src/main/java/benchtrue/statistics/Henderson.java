package benchtrue.statistics;

/**
 * Henderson's mixed-model equations (1975) at given ratios &theta; of the effects' standard deviations to the residual one, in the
 * spherical form of Bates et al. (2015, Journal of Statistical Software 67(1)): unknowns u with effects b = &theta;u.
 *
 * <p>The factor kept aside has a diagonal block and is absorbed, level by level; what is left is solved by elimination. Holds the
 * profiled REML criterion and the solution. O(&Sigma; entries&sup2; a level aside + size&sup3;/3).
 */
final class Henderson {
    private static final double TWO_PI = 2 * StrictMath.PI;
    private static final double LOST = 1e-10;

    final CrossCounts counts;
    final MixedRows rows;
    final double[] theta;
    /** Scale of each dense unknown: its factor's ratio, 1 for a fixed effect, 0 for an aliased one. */
    final double[] scale;
    /** The eliminated equations. */
    final double[][] upper;

    private final double residualSquares;
    private final double criterion;
    private double[] solution;

    Henderson(CrossCounts counts, double[] theta) {
        this.counts = counts;
        this.rows = counts.rows;
        this.theta = theta;
        scale = scales();
        upper = equations();
        double logs = absorb();
        Cholesky.eliminate(upper, rows.size);
        for (int i = 0; i < rows.size; i++) {
            logs += 2 * StrictMath.log(upper[i][i]);
        }
        residualSquares = upper[rows.size][rows.size];
        int df = degreesOfFreedom();
        // Residuals lost in rounding have no logarithm worth comparing.
        criterion = residualSquares > LOST * counts.dense[rows.size][rows.size]
                ? logs - counts.logWeights + df * (1 + StrictMath.log(TWO_PI * residualSquares / df))
                : Double.NaN;
    }

    int degreesOfFreedom() {
        return counts.used - counts.rank();
    }

    /** REML criterion as lme4 defines it: minus twice the profiled log restricted likelihood. */
    public double value() {
        return criterion;
    }

    double residualVariance() {
        int df = degreesOfFreedom();
        return df > 0 ? residualSquares / df : Double.NaN;
    }

    private double[] scales() {
        double[] result = new double[rows.size + 1];
        for (int f = 0; f < rows.factors.length; f++) {
            for (int level = 0; f != rows.aside && level < rows.factors[f].levels(); level++) {
                result[rows.start[f] + level] = theta[f];
            }
        }
        for (int j = rows.effects; j < rows.size; j++) {
            result[j] = counts.aliased[j] ? 0 : 1;
        }
        result[rows.size] = 1;
        return result;
    }

    private double[][] equations() {
        int n = rows.size + 1;
        double[][] s = new double[n][n];
        for (int i = 0; i < n; i++) {
            if (scale[i] != 0) {
                for (int j = i; j < n; j++) {
                    s[i][j] = scale[i] * scale[j] * counts.dense[i][j];
                }
            }
        }
        for (int i = 0; i < rows.size; i++) {
            s[i][i] += i < rows.effects || counts.aliased[i] ? 1 : 0;
        }
        return s;
    }

    /** Takes the factor kept aside out of the equations; returns the logarithm of its block's determinant. */
    private double absorb() {
        double logs = 0;
        LevelSums sums = counts.aside;
        double[] scaled = new double[rows.size + 1];
        for (int level = 0; level < sums.counts.length; level++) {
            double pivot = pivot(level);
            logs += StrictMath.log(pivot);
            double root = aside() / StrictMath.sqrt(pivot);
            int end = sums.from[level + 1];
            for (int a = sums.from[level]; a < end; a++) {
                scaled[sums.places[a]] = root * scale[sums.places[a]] * sums.values[a];
            }
            for (int a = sums.from[level]; a < end; a++) {
                double[] target = upper[sums.places[a]];
                double factor = scaled[sums.places[a]];
                for (int b = a; b < end; b++) {
                    target[sums.places[b]] -= factor * scaled[sums.places[b]];
                }
            }
        }
        return logs;
    }

    /** The ratio of the factor kept aside. */
    double aside() {
        return theta[rows.aside];
    }

    /** The diagonal of a level kept aside. */
    double pivot(int level) {
        return aside() * aside() * counts.aside.counts[level] + 1;
    }

    private double[] solution() {
        if (solution == null) {
            solution = Cholesky.backSolve(upper, rows.size);
        }
        return solution;
    }

    /** Returns the solution for a dense unknown on its own scale: a level's effect, or a fixed effect of the centred columns. */
    double dense(int place) {
        return scale[place] * solution()[place];
    }

    /** Returns the spherical u of a level. */
    double spherical(int factor, int level) {
        if (factor != rows.aside) {
            return solution()[rows.start[factor] + level];
        }
        LevelSums sums = counts.aside;
        int last = sums.from[level + 1] - 1;
        if (last < sums.from[level]) {
            return 0;
        }
        // The last entry of a level that has rows is its response.
        double sum = sums.values[last];
        for (int a = sums.from[level]; a < last; a++) {
            sum -= sums.values[a] * dense(sums.places[a]);
        }
        return aside() * sum / pivot(level);
    }

    /** Returns a level's effect. */
    double effect(int factor, int level) {
        return theta[factor] * spherical(factor, level);
    }

    /** Returns the sum of a factor's u&sup2;, in residual variances. */
    double squares(int factor) {
        double sum = 0;
        for (int level = 0; level < rows.factors[factor].levels(); level++) {
            double u = spherical(factor, level);
            sum += u * u;
        }
        return sum / residualVariance();
    }
}
