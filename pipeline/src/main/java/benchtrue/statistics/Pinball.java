package benchtrue.statistics;

/**
 * Pinball loss of a quote against the job (Koenker, Bassett 1978, Econometrica 46): &tau; (y &minus; q) where the job took longer, (1
 * &minus; &tau;)(q &minus; y) where it fitted. The &tau;-quantile minimises its mean; at &tau; = 0.5 it is half the absolute error.
 */
public final class Pinball {
    private Pinball() {}

    /** Returns the loss of one job, in the unit of {@code actual} and {@code quoted}. */
    public static double loss(double actual, double quoted, double tau) {
        double over = actual - quoted;
        return over >= 0 ? tau * over : (tau - 1) * over;
    }
}
