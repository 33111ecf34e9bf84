package benchtrue.statistics;

/**
 * Duan's smearing factor (1983, JASA 78, 605-610): the mean of exp(residual) of a fit on logs. exp(fit) is the usual job; times this
 * factor it is the mean job, which is what the payroll sees. No residual gives {@code NaN}; one gives its own exponential.
 */
public final class Smearing {
    private Smearing() {}

    /** Returns the factor from residuals on the log scale. */
    public static double factor(double[] logResiduals) {
        double[] factors = new double[logResiduals.length];
        for (int i = 0; i < factors.length; i++) {
            factors[i] = StrictMath.exp(logResiduals[i]);
        }
        return Moments.of(factors).mean();
    }
}
