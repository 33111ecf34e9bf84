package benchtrue.statistics;

/**
 * Log-normal regression of hours with open jobs censored at their hours so far: ln t = b0 + xb + &sigma;z.
 *
 * <p>Maximum likelihood by EM (Dempster, Laird, Rubin 1977): an open job's ln t is replaced by its expectation given that it is
 * longer, E[y | y &gt; c] = &mu; + &sigma;h(z), and its square likewise, with h the normal hazard at z = (c &minus; &mu;)/&sigma;; then least squares.
 * Stops when neither a fitted value nor &sigma; moves by more than 1e-10 &sigma;, at the latest after 20,000 steps. Aliased columns get {@code NaN}.
 * Fewer finished jobs than coefficients and scale give {@code NaN} throughout. One decomposition O(n p&sup2;), then O(n p) a step.
 */
public final class CensoredLogNormal {
    private static final int STEPS = 20_000;
    private static final double TOLERANCE = 1e-10;

    private final double[] logs;
    private final boolean[] finished;
    private final double[][] x;
    private final OrthogonalDesign design;
    private double[] coefficients;
    private double[] fitted;
    private double scale;
    private boolean settled;
    private double[] errors;

    private CensoredLogNormal(double[] logs, boolean[] finished, double[][] x) {
        this.logs = logs;
        this.finished = finished;
        this.x = x;
        this.design = new OrthogonalDesign(x);
    }

    /**
     * Returns the fit.
     *
     * @param hours of each job, in all or so far, above 0
     * @param finished whether the job is done
     * @param columns one array a covariate, without the intercept
     * @throws IllegalArgumentException if hours are not positive, or a column differs in length
     */
    public static CensoredLogNormal fit(double[] hours, boolean[] finished, double[][] columns) {
        double[][] x = OrthogonalDesign.withIntercept(hours.length, columns);
        double[] logs = new double[hours.length];
        int events = 0;
        for (int i = 0; i < logs.length; i++) {
            if (!(hours[i] > 0)) {
                throw new IllegalArgumentException("hours must be above 0, found " + hours[i] + " at row " + i);
            }
            logs[i] = StrictMath.log(hours[i]);
            events += finished[i] ? 1 : 0;
        }
        CensoredLogNormal model = new CensoredLogNormal(logs, finished.clone(), x);
        model.iterate(events > model.design.rank());
        model.errors = model.standardErrors();
        return model;
    }

    /** Returns E[y | y &gt; bound] for y normal with the given mean and scale: what an open job's logarithm is worth. */
    public static double expectedBeyond(double bound, double mean, double scale) {
        return mean + scale * Normal.hazard((bound - mean) / scale);
    }

    private void iterate(boolean enough) {
        step(0);
        if (!enough) {
            java.util.Arrays.fill(coefficients, Double.NaN);
            scale = Double.NaN;
        }
        double moved = Double.POSITIVE_INFINITY;
        for (int steps = 0; steps < STEPS && moved > TOLERANCE * scale; steps++) {
            double[] before = fitted;
            double scaleBefore = scale;
            step(scale);
            moved = StrictMath.abs(scale - scaleBefore);
            for (int i = 0; i < fitted.length; i++) {
                moved = StrictMath.max(moved, StrictMath.abs(fitted[i] - before[i]));
            }
        }
        settled = moved <= TOLERANCE * scale;
    }

    /** One E and M step; at scale 0 open jobs enter as if they were finished now. */
    private void step(double sigma) {
        int n = logs.length;
        double[] y = logs.clone();
        double extra = 0;
        for (int i = 0; i < n && sigma > 0; i++) {
            if (!finished[i]) {
                double z = (logs[i] - fitted[i]) / sigma;
                double h = Normal.hazard(z);
                y[i] = fitted[i] + sigma * h;
                extra += sigma * sigma * (1 - h * (h - z));
            }
        }
        double[] left = y.clone();
        coefficients = design.solve(left);
        double squares = extra;
        for (int i = 0; i < n; i++) {
            squares += left[i] * left[i];
            y[i] -= left[i];
        }
        fitted = y;
        scale = StrictMath.sqrt(squares / n);
    }

    /** From the observed information of the coefficients and ln &sigma;, its second derivatives written out. */
    private double[] standardErrors() {
        int p = x.length;
        double[][] information = new double[p + 1][p + 1];
        double[] row = new double[p + 1];
        for (int i = 0; i < logs.length; i++) {
            double z = (logs[i] - fitted[i]) / scale;
            double h = Normal.hazard(z);
            double bend = finished[i] ? 1 : h * (h - z);
            double cross = finished[i] ? 2 * z : z * bend + h;
            for (int j = 0; j < p; j++) {
                row[j] = Double.isNaN(coefficients[j]) ? 0 : x[j][i] / scale;
            }
            for (int j = 0; j < p; j++) {
                for (int k = j; k < p; k++) {
                    information[j][k] += bend * row[j] * row[k];
                }
                information[j][p] += cross * row[j];
            }
            information[p][p] += cross * z;
        }
        for (int j = 0; j < p; j++) {
            information[j][j] += Double.isNaN(coefficients[j]) ? 1 : 0;
        }
        Cholesky.eliminate(information, p + 1);
        double[][] covariance = Cholesky.inverse(information, p + 1);
        double[] result = new double[p + 1];
        for (int j = 0; j <= p; j++) {
            boolean known = j == p || !Double.isNaN(coefficients[j]);
            result[j] = known ? StrictMath.sqrt(covariance[j][j]) : Double.NaN;
        }
        return result;
    }

    /** Returns whether the iteration came to rest; with nearly all jobs open it may not, and the figures are then too low. */
    public boolean settled() {
        return settled;
    }

    /** Returns the intercept (0) or the coefficient of column {@code index} &minus; 1, on the log scale. */
    public double coefficient(int index) {
        return coefficients[index];
    }

    /** Returns the standard error of {@link #coefficient}. */
    public double error(int index) {
        return errors[index];
    }

    /** Returns the standard error of ln &sigma;. */
    public double logScaleError() {
        return errors[x.length];
    }

    /** Returns &sigma;, by maximum likelihood (divided by n). */
    public double scale() {
        return scale;
    }

    /** Returns the fitted mean of ln t of a row. */
    public double fitted(int row) {
        return fitted[row];
    }

    /** Returns the log-likelihood of the hours (not of their logarithms). */
    public double logLikelihood() {
        double sum = 0;
        for (int i = 0; i < logs.length; i++) {
            double z = (logs[i] - fitted[i]) / scale;
            sum += finished[i] ? StrictMath.log(Normal.density(z) / scale) - logs[i] : Normal.logUpperTail(z);
        }
        return sum;
    }
}
