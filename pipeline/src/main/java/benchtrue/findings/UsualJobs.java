package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.shop.Hours;
import benchtrue.statistics.Normal;
import java.util.ArrayList;
import java.util.List;

/**
 * What one job of each repair type usually takes, at the type's own mix of people, instruments and quotes.
 *
 * <p>The mean on the scale of hours is the usual job times Duan's smearing factor (1983) of the type's jobs, leaning on its
 * family's; all means together are calibrated to the shop's total hours. Distances are those of unweighted jobs: weighted
 * ones would lose the long jobs that a mean consists of.
 */
final class UsualJobs {
    private static final double LENT_JOBS = 8;
    private static final double REACH = Normal.quantile(0.95);

    private final JobLines jobs;
    private final JobModel model;
    private final JobMix mix;
    private final double[] smearing;
    private final double[] variance;
    private final int[] own;

    private UsualJobs(JobLines jobs, JobModel model) {
        this.jobs = jobs;
        this.model = model;
        mix = JobMix.of(jobs, model);
        int types = jobs.ledger().repairTypes().size();
        smearing = new double[types];
        variance = new double[types];
        own = new int[types];
        addDistances();
    }

    /** Returns one row a repair type code. */
    static List<UsualJob> of(JobLines jobs, JobModel model, OpenJobs open) {
        UsualJobs usual = new UsualJobs(jobs, model);
        double calibration = usual.calibration();
        OpenJobs counted = model.countsOpenJobs() ? open : open.noneUsed();
        int[] used = usual.byType(counted.used());
        int[] leftOut = usual.byType(counted.leftOut());
        List<UsualJob> rows = new ArrayList<>();
        for (int type = 0; type < used.length; type++) {
            rows.add(usual.row(type, calibration, used[type], leftOut[type]));
        }
        return rows;
    }

    private UsualJob row(int type, double calibration, int used, int leftOut) {
        double log = mix.expected(type);
        double reach = REACH * mix.error(type);
        double typical = StrictMath.exp(log);
        return new UsualJob(
                type,
                own[type],
                used,
                leftOut,
                typical,
                StrictMath.exp(log - reach),
                StrictMath.exp(log + reach),
                StrictMath.exp(mix.withoutOpen(type)),
                typical * smearing[type] * calibration,
                StrictMath.sqrt(variance[type]),
                StrictMath.exp(mix.atBook(type)));
    }

    /** Sums squares and exponentials of each job's distance from its type's usual job; each type then leans on its family. */
    private void addDistances() {
        JobRows rows = model.rows();
        int families = rows.factors().families().size();
        double[] familySquares = new double[families];
        double[] familyExponentials = new double[families];
        int[] familyOwn = new int[families];
        for (int row = 0; row < rows.finished(); row++) {
            int type = rows.factors().type(rows.line()[row]);
            int family = rows.factors().familyOfType(type);
            double distance = rows.logRatio()[row] - mix.expected(type);
            own[type]++;
            variance[type] += distance * distance;
            smearing[type] += StrictMath.exp(distance);
            familyOwn[family]++;
            familySquares[family] += distance * distance;
            familyExponentials[family] += StrictMath.exp(distance);
        }
        double shopVariance = sum(familySquares) / rows.finished();
        double shopSmearing = sum(familyExponentials) / rows.finished();
        for (int type = 0; type < own.length; type++) {
            int family = rows.factors().familyOfType(type);
            double lentVariance = lean(familySquares[family], familyOwn[family], shopVariance);
            double lentSmearing = lean(familyExponentials[family], familyOwn[family], shopSmearing);
            variance[type] = lean(variance[type], own[type], lentVariance);
            smearing[type] = lean(smearing[type], own[type], lentSmearing);
        }
    }

    private static double lean(double sum, int count, double prior) {
        return (sum + LENT_JOBS * prior) / (count + LENT_JOBS);
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    /** What all means are multiplied by so that they give the shop's total hours. */
    private double calibration() {
        double actual = 0;
        double fitted = 0;
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line)) {
                int type = model.rows().factors().type(line);
                actual += Hours.of(jobs.actualSeconds(line));
                fitted += StrictMath.exp(mix.expected(type)) * smearing[type] * jobs.todayQuotedHours(line);
            }
        }
        return actual / fitted;
    }

    private int[] byType(int[] lines) {
        int[] count = new int[own.length];
        for (int line : lines) {
            count[jobs.ledger().lines().repairType(line)]++;
        }
        return count;
    }
}
