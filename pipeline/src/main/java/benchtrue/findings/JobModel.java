package benchtrue.findings;

import benchtrue.findings.JobFactors.TraitColumn;
import benchtrue.hours.JobLines;
import benchtrue.statistics.CrossedEffects;
import benchtrue.statistics.Huber;
import benchtrue.statistics.Normal;
import java.util.Arrays;

/**
 * What the hours of a job depend on (methods, section 4): ln(hours / quote) = repair type within its family + technician +
 * instrument class + quote writer + traits and the quote's adjustment + chance, with random intercepts for the first five.
 *
 * <p>Variances by REML on finished jobs (Henderson 1975; Bates et al. 2015); then effects with Huber weights, so that one wild
 * job can't carry them; then open jobs as censored at their hours so far, each replaced by its expectation (EM).
 *
 * @param finishedOnly effects from finished jobs alone
 * @param fit effects, open jobs counted
 */
record JobModel(JobRows rows, CrossedEffects finishedOnly, CrossedEffects fit) {
    private static final int OPEN_ROUNDS = 12;

    /** Hours are kept to the second: ln(hours) of a job of a day is not known to better than 3e-5. */
    private static final double ROUNDING = 1e-9;

    /** Returns the fit to a shop's jobs. */
    static JobModel of(JobLines jobs, JobRows rows) {
        double[] weights = new double[rows.line().length];
        Arrays.fill(weights, 0, rows.finished(), 1);
        CrossedEffects plain = CrossedEffects.fit(rows.logRatio(), rows.columns(), weights, rows.randomEffects(jobs));
        CrossedEffects finishedOnly = plain.robust(Huber.K);
        // How far an open job may still go is known only once finished jobs scatter.
        boolean compared = rows.finished() < weights.length && scatter(rows, finishedOnly);
        return new JobModel(rows, finishedOnly, compared ? withOpenJobs(rows, finishedOnly) : finishedOnly);
    }

    /** Returns whether the finished jobs stand about what is expected of them by more than rounding. */
    private static boolean scatter(JobRows rows, CrossedEffects finishedOnly) {
        return finishedOnly.residualVariance() > ROUNDING
                && squares(finishedOnly, rows.finished()) / rows.finished() > ROUNDING;
    }

    /** The spread grows with the open jobs, in proportion to the squares it is estimated from. */
    private static CrossedEffects withOpenJobs(JobRows rows, CrossedEffects finishedOnly) {
        double perSquare = finishedOnly.residualVariance() / (squares(finishedOnly, rows.finished()) / rows.finished());
        double variance = finishedOnly.residualVariance();
        CrossedEffects fit = finishedOnly;
        double[] weights = new double[rows.line().length];
        Arrays.setAll(weights, row -> row < rows.finished() ? finishedOnly.weight(row) : 1);
        for (int round = 0; round < OPEN_ROUNDS; round++) {
            double[] y = rows.logRatio().clone();
            double unseen = 0;
            for (int row = rows.finished(); row < y.length; row++) {
                int line = rows.line()[row];
                double expected = fit.predict(rows.values(line), rows.levels(line));
                double z = (y[row] - expected) / StrictMath.sqrt(variance);
                double hazard = Normal.hazard(z);
                y[row] = expected + StrictMath.sqrt(variance) * hazard;
                unseen += variance * (1 - hazard * (hazard - z));
            }
            fit = finishedOnly.refit(y, weights);
            variance = perSquare * (squares(fit, y.length) + unseen) / y.length;
        }
        return fit;
    }

    private static double squares(CrossedEffects fit, int rows) {
        double sum = 0;
        double[] residuals = fit.residuals();
        for (int row = 0; row < rows; row++) {
            sum += residuals[row] * residuals[row];
        }
        return sum;
    }

    /** Returns ln(hours / quote) expected of a line. */
    double expected(int line) {
        return fit.predict(rows.values(line), rows.levels(line));
    }

    /** Returns what a trait adds to ln(hours) of a line; 0 where the line lacks it, or too few of its family have it. */
    double traitEffect(int line, int trait) {
        for (int i = 0; i < rows.traits().size(); i++) {
            TraitColumn column = rows.traits().get(i);
            if (column.trait() == trait && column.family() == rows.factors().family(line)) {
                // Place 0 is the intercept, place 1 the quote's adjustment.
                return rows.factors().has(line, trait) ? fit.coefficient(i + 2) : 0;
            }
        }
        return 0;
    }

    /** Returns whether open jobs are counted; they are not where there is none, or too little to hold them against. */
    boolean countsOpenJobs() {
        return fit != finishedOnly;
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
