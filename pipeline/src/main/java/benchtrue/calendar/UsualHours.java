package benchtrue.calendar;

import benchtrue.costing.Families;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitEvidence;
import benchtrue.shop.Hours;

/**
 * How long the jobs of each repair type take against the quote, from closed lines with logged hours: mean and standard
 * deviation of ln(hours / quoted hours against today's book). Few jobs lean on the family, a small family on the shop: each
 * counts as {@value #PRIOR} jobs of its kind.
 */
final class UsualHours {
    private static final int PRIOR = 3;
    /** Spread of a shop without any logged job (common practice, no source). */
    private static final double WIDE = 0.5;

    private final JobLines jobs;
    private final int[] familyOf;
    private final int[] count;
    private final double[] mean;
    private final double[] square;
    private final double shopMean;
    private final double shopVariance;
    private final double[] familyMean;

    UsualHours(JobLines jobs) {
        this.jobs = jobs;
        Families families = Families.of(jobs.ledger());
        familyOf = families.ofType();
        count = new int[familyOf.length];
        mean = new double[familyOf.length];
        square = new double[familyOf.length];
        for (int line = 0; line < jobs.size(); line++) {
            add(line);
        }
        shopMean = shopMean();
        shopVariance = shopVariance();
        familyMean = familyMeans(families.names().size());
    }

    /** Welford's update, so that equal jobs have no spread at all. */
    private void add(int line) {
        boolean counts = jobs.judged(line)
                && jobs.evidence(line) == SplitEvidence.LOGGED
                && jobs.actualSeconds(line) > 0
                && jobs.todayQuotedHours(line) > 0;
        if (counts) {
            int type = jobs.ledger().lines().repairType(line);
            double y = StrictMath.log(Hours.of(jobs.actualSeconds(line)) / jobs.todayQuotedHours(line));
            count[type]++;
            double step = y - mean[type];
            mean[type] += step / count[type];
            square[type] += step * (y - mean[type]);
        }
    }

    private double shopMean() {
        double sum = 0;
        int jobsCounted = 0;
        for (int type = 0; type < count.length; type++) {
            sum += count[type] * mean[type];
            jobsCounted += count[type];
        }
        return jobsCounted == 0 ? 0 : sum / jobsCounted;
    }

    private double shopVariance() {
        double sum = 0;
        int degrees = 0;
        for (int type = 0; type < count.length; type++) {
            sum += square[type];
            degrees += StrictMath.max(0, count[type] - 1);
        }
        return degrees == 0 ? WIDE * WIDE : (sum + PRIOR * WIDE * WIDE) / (degrees + PRIOR);
    }

    private double[] familyMeans(int families) {
        double[] sum = new double[families];
        int[] counted = new int[families];
        for (int type = 0; type < count.length; type++) {
            sum[familyOf[type]] += count[type] * mean[type];
            counted[familyOf[type]] += count[type];
        }
        double[] means = new double[families];
        for (int family = 0; family < families; family++) {
            means[family] = (sum[family] + PRIOR * shopMean) / (counted[family] + PRIOR);
        }
        return means;
    }

    /** Returns the mean of ln(hours / quoted hours) of a type. */
    double mean(int type) {
        return (count[type] * mean[type] + PRIOR * familyMean[familyOf[type]]) / (count[type] + PRIOR);
    }

    /** Returns the standard error of that mean. */
    double meanError(int type) {
        return StrictMath.sqrt(variance(type) / (count[type] + PRIOR));
    }

    /** Returns the standard deviation of the next job about that mean, doubt about the mean included. */
    double spread(int type) {
        return StrictMath.sqrt(variance(type) * (1 + 1.0 / (count[type] + PRIOR)));
    }

    private double variance(int type) {
        int degrees = StrictMath.max(0, count[type] - 1);
        return (square[type] + PRIOR * shopVariance) / (degrees + PRIOR);
    }
}
