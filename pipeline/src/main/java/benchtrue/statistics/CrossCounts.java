package benchtrue.statistics;

/**
 * Everything the mixed-model equations need from the rows: weighted cross-counts of levels, and sums of columns and response over
 * them. Rows are read a fixed number of times, O(rows (factors + columns)&sup2;); afterwards only levels matter.
 */
final class CrossCounts {
    private static final double ALIASED = 1e-10;
    /** A constant column leaves rounding errors about its mean, of this size relative to the mean's square. */
    private static final double ROUNDING = 1e-20;

    final MixedRows rows;
    /** Rows of positive weight. */
    final int used;
    /** Sum of the logarithms of the positive weights. */
    final double logWeights;
    /** Cross-products of all dense unknowns and the response: an upper triangle, {@code rows.size} + 1 square. */
    final double[][] dense;
    /** The sums of the factor kept aside. */
    final LevelSums aside;
    /** Whether a dense unknown is a column that the earlier columns explain. */
    final boolean[] aliased;

    CrossCounts(MixedRows rows) {
        this.rows = rows;
        int positive = 0;
        double logs = 0;
        for (double weight : rows.weights) {
            if (weight > 0) {
                positive++;
                logs += StrictMath.log(weight);
            }
        }
        used = positive;
        logWeights = logs;
        dense = products(rows);
        aside = new LevelSums(rows);
        aliased = aliased();
    }

    private static double[][] products(MixedRows rows) {
        double[][] sums = new double[rows.size + 1][rows.size + 1];
        for (int i = 0; i < rows.count(); i++) {
            int entries = rows.read(i);
            for (int a = 0; a < entries; a++) {
                double[] target = sums[rows.places[a]];
                double weighted = rows.weights[i] * rows.values[a];
                for (int b = a; b < entries; b++) {
                    target[rows.places[b]] += weighted * rows.values[b];
                }
            }
        }
        centre(sums, rows);
        return sums;
    }

    /** Centres what was read as it is: &Sigma;(x &minus; m)(z &minus; n) = &Sigma;xz &minus; m&Sigma;z &minus; n&Sigma;x + mn&Sigma;1. */
    private static void centre(double[][] sums, MixedRows rows) {
        int intercept = rows.effects;
        double all = sums[intercept][intercept];
        double[] totals = sums[intercept].clone();
        for (int a = 0; a <= rows.size; a++) {
            double m = rows.shift[a];
            double total = a < intercept ? sums[a][intercept] : totals[a];
            for (int b = Math.max(a, intercept + 1); b <= rows.size; b++) {
                double n = rows.shift[b];
                sums[a][b] -= m * totals[b] + n * total - m * n * all;
            }
        }
    }

    private boolean[] aliased() {
        boolean[] result = new boolean[rows.size];
        int first = rows.effects + 1;
        int p = rows.size - first;
        double[][] gram = new double[p][];
        for (int j = 0; j < p; j++) {
            gram[j] = java.util.Arrays.copyOfRange(dense[first + j], first, rows.size);
        }
        for (int j = 0; j < p; j++) {
            double level = ROUNDING * dense[rows.effects][rows.effects] * rows.means[j] * rows.means[j];
            result[first + j] = !(gram[j][j] > ALIASED * dense[first + j][first + j] && gram[j][j] > level);
            for (int i = j + 1; i < p && !result[first + j]; i++) {
                double factor = gram[j][i] / gram[j][j];
                for (int k = i; k < p; k++) {
                    gram[i][k] -= factor * gram[j][k];
                }
            }
        }
        return result;
    }

    /** Number of fixed effects that can be estimated, the intercept among them. */
    int rank() {
        int rank = rows.size - rows.effects;
        for (boolean out : aliased) {
            rank -= out ? 1 : 0;
        }
        return rank;
    }

    /** Number of levels of a factor that have a row of positive weight. */
    int levelsUsed(int factor) {
        int count = 0;
        for (int level = 0; level < rows.factors[factor].levels(); level++) {
            int at = rows.start[factor] + level;
            double weight = factor == rows.aside ? aside.counts[level] : dense[at][at];
            count += weight > 0 ? 1 : 0;
        }
        return count;
    }
}
