package benchtrue.statistics;

/**
 * Ordinary or weighted least squares with an intercept, by orthogonal decomposition (checked on NIST StRD Norris and Longley).
 *
 * <p>Aliased columns get {@code NaN} and the fit is that of the others. With no more rows than coefficients the errors are
 * {@code NaN}; with no rows everything is. O(n p&sup2;).
 */
public final class LeastSquares {
    private final double[] coefficients;
    private final double[] inverseDiagonal;
    private final double[] residuals;
    private final int degreesOfFreedom;
    private final double squares;

    private LeastSquares(
            double[] coefficients, double[] inverseDiagonal, double[] residuals, int degreesOfFreedom, double squares) {
        this.coefficients = coefficients;
        this.inverseDiagonal = inverseDiagonal;
        this.residuals = residuals;
        this.degreesOfFreedom = degreesOfFreedom;
        this.squares = squares;
    }

    /** Returns the unweighted fit of {@code y} on an intercept and {@code columns} (one array a column, as long as y). */
    public static LeastSquares fit(double[] y, double[][] columns) {
        double[] weights = new double[y.length];
        java.util.Arrays.fill(weights, 1);
        return fit(y, columns, weights);
    }

    /**
     * Returns the fit that minimises &Sigma; w (y &minus; Xb)&sup2;.
     *
     * @param weights at least 0, one a row; a row of weight 0 counts neither in the sums nor in the degrees of freedom
     * @throws IllegalArgumentException if a column differs from {@code y} in length
     */
    public static LeastSquares fit(double[] y, double[][] columns, double[] weights) {
        double[][] x = OrthogonalDesign.withIntercept(y.length, columns);
        double[] left = new double[y.length];
        int rows = 0;
        for (int i = 0; i < y.length; i++) {
            double root = StrictMath.sqrt(weights[i]);
            left[i] = root * y[i];
            rows += weights[i] > 0 ? 1 : 0;
        }
        OrthogonalDesign design = new OrthogonalDesign(scaled(x, weights));
        double[] coefficients = design.solve(left);
        double squares = 0;
        for (double e : left) {
            squares += e * e;
        }
        return new LeastSquares(
                coefficients, design.inverseDiagonal(), residuals(y, x, coefficients), rows - design.rank(), squares);
    }

    private static double[][] scaled(double[][] columns, double[] weights) {
        double[][] scaled = new double[columns.length][weights.length];
        for (int j = 0; j < columns.length; j++) {
            for (int i = 0; i < weights.length; i++) {
                scaled[j][i] = StrictMath.sqrt(weights[i]) * columns[j][i];
            }
        }
        return scaled;
    }

    private static double[] residuals(double[] y, double[][] x, double[] coefficients) {
        double[] residuals = y.clone();
        for (int j = 0; j < x.length; j++) {
            double b = Double.isNaN(coefficients[j]) ? 0 : coefficients[j];
            for (int i = 0; i < y.length; i++) {
                residuals[i] -= b * x[j][i];
            }
        }
        return residuals;
    }

    /** Returns the intercept (0) or the coefficient of column {@code index} &minus; 1. */
    public double coefficient(int index) {
        return coefficients[index];
    }

    /** Returns the standard error of {@link #coefficient}. */
    public double error(int index) {
        return StrictMath.sqrt(variance() * inverseDiagonal[index]);
    }

    /** Returns y minus the fit, one a row, on the unweighted scale. */
    public double[] residuals() {
        return residuals.clone();
    }

    /** Returns rows of positive weight minus coefficients that could be estimated. */
    public int degreesOfFreedom() {
        return degreesOfFreedom;
    }

    /** Returns the weighted sum of squared residuals. */
    public double squares() {
        return squares;
    }

    /** Returns the residual variance. */
    public double variance() {
        return degreesOfFreedom > 0 ? squares / degreesOfFreedom : Double.NaN;
    }
}
