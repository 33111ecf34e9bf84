package benchtrue.revision;

import benchtrue.findings.RepairFinding;
import benchtrue.findings.UsualJob;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.Figures;
import benchtrue.statistics.Normal;
import java.util.Optional;

/**
 * What the shop's policy asks for, before any guard rail.
 *
 * <p>The mean is that of the model of hours, in agreement with the shop's total hours, times what putting right adds; the
 * quantile is that of the model's log-normal jobs about the usual one. Both lean on similar repairs where jobs are few. Where
 * there is no model, the type's own jobs stand in: their load factor, and the quantile of their ratios.
 *
 * @param factor hours per hour of today's book; NaN without jobs
 * @param basis what it stands on, in words
 * @param mean the mean alone
 * @param usual the median of the model, NaN without one
 * @param spread of ln(hours) about it, NaN without one
 */
record Target(double factor, String basis, double mean, double usual, double spread) {
    static Target of(RepairFinding finding, Optional<UsualJob> job, PastJobs past, Settings settings) {
        Policy policy = settings.policy();
        Figures figures = settings.figures();
        Optional<UsualJob> known = job.filter(usual -> usual.jobs() > 0 && Double.isFinite(usual.mean()));
        double mean = known.map(usual -> usual.mean() * returns(finding)).orElse(finding.loadFactor());
        double usual = known.map(UsualJob::typical).orElse(Double.NaN);
        double spread = known.map(UsualJob::spread).orElse(Double.NaN);
        double fit = known.isPresent()
                ? usual * StrictMath.exp(Normal.quantile(policy.coverage()) * spread)
                : past.quantile(finding.repairType(), policy.coverage());
        boolean byFit = policy.rule() == Policy.Rule.COVERAGE || (policy.rule() == Policy.Rule.LARGER && fit > mean);
        return new Target(
                byFit ? fit : mean,
                byFit ? fitBasis(finding, fit, policy, figures) : meanBasis(finding, mean, figures),
                mean,
                usual,
                spread);
    }

    /** Returns hours with putting right per hour without. */
    private static double returns(RepairFinding finding) {
        return finding.actualSeconds() > 0 ? 1 + finding.reworkSeconds() / (double) finding.actualSeconds() : 1;
    }

    private static String meanBasis(RepairFinding finding, double mean, Figures figures) {
        return "what " + figures.count(finding.lines(), "job", "jobs") + " took together: " + figures.ratio(mean)
                + " hours per quoted hour";
    }

    private static String fitBasis(RepairFinding finding, double fit, Policy policy, Figures figures) {
        return figures.percent(policy.coverage()) + " of " + figures.count(finding.lines(), "job", "jobs") + " fit at "
                + figures.ratio(fit) + " hours per quoted hour";
    }
}
