package benchtrue.findings;

import benchtrue.statistics.Normal;
import benchtrue.statistics.StudentT;

/**
 * Scores each value against the values before it (Hawkins 1987, Journal of Quality Technology 19, self-starting charts): the
 * standardised distance from their mean is Student t, and becomes a normal score. Independent, of mean 0 and spread 1 for
 * normal values without change, however few there are; clipped at 3, so that one wild job alone can't signal.
 */
final class SelfStarting {
    private static final int WARM_UP = 8;
    private static final double MOST = 3;

    private SelfStarting() {}

    /** Returns the scores; NaN for the first {@value #WARM_UP}, which only set the level. */
    static double[] scores(double[] values) {
        double[] scores = new double[values.length];
        double mean = 0;
        double squares = 0;
        for (int n = 0; n < values.length; n++) {
            scores[n] = n < WARM_UP ? Double.NaN : score(values[n], mean, squares, n);
            double off = values[n] - mean;
            mean += off / (n + 1);
            squares += off * (values[n] - mean);
        }
        return scores;
    }

    private static double score(double value, double mean, double squares, int before) {
        double spread = StrictMath.sqrt(squares / (before - 1) * (before + 1) / before);
        if (spread == 0) {
            return StrictMath.signum(value - mean) * MOST;
        }
        double t = (value - mean) / spread;
        double upper = StudentT.upperTail(StrictMath.abs(t), before - 1);
        double score = upper == 0 ? MOST : -Normal.quantile(upper);
        return StrictMath.signum(t) * StrictMath.min(MOST, score);
    }
}
