package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.statistics.CensoredLogNormal;
import benchtrue.statistics.CrossedEffects;
import benchtrue.statistics.Huber;
import java.util.Arrays;

/**
 * What the hours of a job depend on (methods, section 4): ln(hours / quote) = repair type within its family + technician +
 * instrument class + quote writer + traits and the quote's adjustment + chance, with random intercepts for the first five.
 *
 * <p>Variances by REML on finished jobs (Henderson 1975; Bates et al. 2015); then effects with Huber weights, so that one wild
 * job can't carry them; then open jobs as censored at their hours so far, each replaced by its expectation (EM).
 */
final class JobModel {
    private static final int OPEN_ROUNDS = 8;

    private final JobRows rows;
    private final CrossedEffects finishedOnly;
    private final CrossedEffects fit;

    private JobModel(JobRows rows, CrossedEffects finishedOnly, CrossedEffects fit) {
        this.rows = rows;
        this.finishedOnly = finishedOnly;
        this.fit = fit;
    }

    /** Returns the fit to a shop's jobs. */
    static JobModel of(JobLines jobs, JobRows rows) {
        double[] weights = new double[rows.line().length];
        Arrays.fill(weights, 0, rows.finished(), 1);
        CrossedEffects plain = CrossedEffects.fit(rows.logRatio(), rows.columns(), weights, rows.randomEffects(jobs));
        CrossedEffects finishedOnly = plain.robust(Huber.K);
        CrossedEffects fit = finishedOnly;
        // How far an open job may still go is known only once finished jobs scatter.
        boolean compared = rows.finished() < weights.length && finishedOnly.residualVariance() > 0;
        for (int round = 0; compared && round < OPEN_ROUNDS; round++) {
            fit = withOpenJobs(rows, finishedOnly, fit);
        }
        return new JobModel(rows, finishedOnly, fit);
    }

    private static CrossedEffects withOpenJobs(JobRows rows, CrossedEffects finishedOnly, CrossedEffects fit) {
        double[] y = rows.logRatio().clone();
        double[] weights = new double[y.length];
        double spread = StrictMath.sqrt(fit.residualVariance());
        for (int row = 0; row < y.length; row++) {
            weights[row] = row < rows.finished() ? finishedOnly.weight(row) : 1;
            if (row >= rows.finished()) {
                int line = rows.line()[row];
                double expected = fit.predict(rows.values(line), rows.levels(line));
                y[row] = CensoredLogNormal.expectedBeyond(y[row], expected, spread);
            }
        }
        return finishedOnly.refit(y, weights);
    }

    JobRows rows() {
        return rows;
    }

    /** Returns the effects, open jobs counted. */
    CrossedEffects fit() {
        return fit;
    }

    /** Returns ln(hours / quote) expected of a line. */
    double expected(int line) {
        return fit.predict(rows.values(line), rows.levels(line));
    }

    /** Returns the effects from finished jobs alone. */
    CrossedEffects finishedOnly() {
        return finishedOnly;
    }

    /** Returns how many finished jobs were so far off that they count less. */
    int downWeighted() {
        int count = 0;
        for (int row = 0; row < rows.finished(); row++) {
            count += finishedOnly.weight(row) < 1 ? 1 : 0;
        }
        return count;
    }
}
