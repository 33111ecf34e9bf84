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

    Uncertainty(Henderson equations) {
        this.equations = equations;
        rows = equations.rows;
        sums = equations.counts.aside;
        inverse = Cholesky.inverse(equations.upper, rows.size);
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
        double own = amount == 0 ? 0 : absorb(v, level, amount);
        return own + QuasiNewton.dot(v, times(v));
    }

    /** Moves a level kept aside into the dense unknowns; returns the variance it has of its own. */
    private double absorb(double[] v, int level, double amount) {
        double pivot = equations.pivot(level);
        double factor = amount * equations.aside() / pivot;
        for (int a = sums.from[level]; a < sums.from[level + 1]; a++) {
            int place = sums.places[a];
            if (place < rows.size) {
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
}
