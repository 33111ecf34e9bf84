package benchtrue.revision;

import benchtrue.findings.RepairFinding;
import benchtrue.settings.Policy;

/**
 * What the shop's policy asks for, before any guard rail.
 *
 * @param factor hours per hour of today's book; NaN without jobs
 * @param basis what it stands on, in words
 */
record Target(double factor, String basis) {
    static Target of(RepairFinding finding, PastJobs past, Policy policy) {
        Target mean = mean(finding);
        Target fit = fit(finding, past, policy);
        return switch (policy.rule()) {
            case BREAK_EVEN -> mean;
            case COVERAGE -> fit;
            case LARGER -> fit.factor > mean.factor ? fit : mean;
        };
    }

    private static Target mean(RepairFinding finding) {
        return new Target(
                finding.loadFactor(),
                "what " + jobs(finding) + " took together: " + Words.ratio(finding.loadFactor())
                        + " hours per quoted hour");
    }

    private static Target fit(RepairFinding finding, PastJobs past, Policy policy) {
        double factor = past.quantile(finding.repairType(), policy.coverage());
        return new Target(
                factor,
                Words.percent(policy.coverage()) + " of " + jobs(finding) + " fit at " + Words.ratio(factor)
                        + " hours per quoted hour");
    }

    private static String jobs(RepairFinding finding) {
        return finding.lines() + (finding.lines() == 1 ? " job" : " jobs");
    }
}
