package benchtrue.statistics;

/**
 * The inverse of the mixed-model equations, from which errors of estimates and the gradient of the criterion come. All variances are
 * in units of the residual variance. One inversion O(size&sup3;), then O(entries&sup2;) a level kept aside.
 */
final class Uncertainty {
    private final Henderson equations;
    private final MixedRows rows;
    private final LevelSums sums;
    private final double[][] inverse;
    private final double[][] fixed;

    Uncertainty(Henderson equations) {
        this.equations = equations;
        rows = equations.rows;
        sums = equations.counts.aside;
        inverse = Cholesky.inverse(equations.upper, rows.size);
        fixed = fixedBlock();
    }

    /** The inverse of the fixed effects' block of the inverse. */
    private double[][] fixedBlock() {
        int p = rows.size - rows.effects;
        double[][] block = new double[p][];
        for (int i = 0; i < p; i++) {
            block[i] = java.util.Arrays.copyOfRange(inverse[rows.effects + i], rows.effects, rows.size);
        }
        Cholesky.eliminate(block, p);
        return Cholesky.inverse(block, p);
    }

    /** Returns the degrees of freedom a factor uses: &Sigma; (1 &minus; var(u &minus; &ucirc;)) over its levels. */
    double information(int factor) {
        double sum = 0;
        for (int level = 0; level < rows.factors[factor].levels(); level++) {
            sum += 1 - level(factor, level);
        }
        return sum;
    }

    /** Returns var(u &minus; &ucirc;) of one level, 1 where the data know nothing of it. */
    double level(int factor, int level) {
        if (factor != rows.aside) {
            int at = rows.start[factor] + level;
            return inverse[at][at];
        }
        double pivot = equations.pivot(level);
        double factorAside = equations.aside() / pivot;
        return 1 / pivot + factorAside * factorAside * form(level);
    }

    /** Returns the quadratic form of the inverse in a kept-aside level's scaled sums. */
    private double form(int level) {
        int from = sums.from[level];
        int count = Math.max(0, sums.from[level + 1] - 1 - from);
        double[] scaled = new double[count];
        int[] places = new int[count];
        for (int a = 0; a < count; a++) {
            places[a] = sums.places[from + a];
            scaled[a] = equations.scale[places[a]] * sums.values[from + a];
        }
        double sum = 0;
        for (int a = 0; a < count; a++) {
            double[] row = inverse[places[a]];
            double part = 0;
            for (int b = 0; b < count; b++) {
                part += scaled[b] * row[places[b]];
            }
            sum += scaled[a] * part;
        }
        return sum;
    }

    /**
     * Returns the variance of the error of a linear combination of unknowns.
     *
     * @param dense coefficients of the dense unknowns, spherical for levels
     * @param level of the factor kept aside
     * @param amount coefficient of that level's u; 0 leaves it out
     */
    double combination(double[] dense, int level, double amount) {
        double[] v = dense.clone();
        double own = amount == 0 ? 0 : absorb(v, level, amount, rows.size);
        return own + dot(v, times(v), rows.size);
    }

    /** Returns var(u | y) of one level with the fixed effects taken as known: lme4's conditional variance. */
    double conditional(int factor, int level) {
        double[] v = new double[rows.size];
        double own = 0;
        if (factor == rows.aside) {
            own = absorb(v, level, 1, rows.effects);
        } else {
            v[rows.start[factor] + level] = 1;
        }
        double[] s = times(v);
        double withFixed = 0;
        for (int i = 0; i < fixed.length; i++) {
            for (int j = 0; j < fixed.length; j++) {
                withFixed += s[rows.effects + i] * fixed[i][j] * s[rows.effects + j];
            }
        }
        return own + dot(v, s, rows.effects) - withFixed;
    }

    /** Moves a level kept aside into the dense unknowns before {@code end}; returns the variance it has of its own. */
    private double absorb(double[] v, int level, double amount, int end) {
        double pivot = equations.pivot(level);
        double factor = amount * equations.aside() / pivot;
        for (int a = sums.from[level]; a < sums.from[level + 1]; a++) {
            int place = sums.places[a];
            if (place < end) {
                v[place] -= factor * equations.scale[place] * sums.values[a];
            }
        }
        return amount * amount / pivot;
    }

    private double[] times(double[] v) {
        double[] product = new double[v.length];
        for (int i = 0; i < v.length; i++) {
            if (v[i] != 0) {
                for (int j = 0; j < v.length; j++) {
                    product[j] += v[i] * inverse[i][j];
                }
            }
        }
        return product;
    }

    private static double dot(double[] a, double[] b, int to) {
        double sum = 0;
        for (int i = 0; i < to; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
