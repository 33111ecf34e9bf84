package benchtrue.revision;

import benchtrue.findings.UsualJob;
import benchtrue.format.Figures;
import benchtrue.settings.Policy;
import benchtrue.statistics.Normal;
import java.util.Optional;

/**
 * What the policy of the shop, or of the repair's family, asks for, before any guard rail.
 *
 * <p>The mean is what all jobs of the type took together, those logged with their ticket as a whole included, as if similar
 * repairs had lent {@value #LENT_JOBS} jobs at the mean of the model of hours; times what putting right adds. The quantile is
 * that of log-normal jobs with that mean, putting right apart, and the model's spread. Where there is no model, the type's own
 * jobs stand in: their load factor, and the quantile of their ratios.
 *
 * @param factor hours per hour of today's book; NaN without jobs
 * @param basis what it stands on, in words
 * @param mean the mean alone
 * @param usual the median of the model, NaN without one
 * @param spread of ln(hours) about it, NaN without one
 */
record Target(double factor, String basis, double mean, double usual, double spread) {
    private static final int LENT_JOBS = 8;

    static Target of(JobTotals taken, Optional<UsualJob> job, PastJobs past, Policy policy, Figures figures) {
        Optional<UsualJob> known =
                job.filter(model -> taken.jobs() > 0 && Double.isFinite(model.mean() * model.spread()));
        double once = known.map(model -> leaning(taken, model.mean())).orElse(Double.NaN);
        double mean = known.isPresent() ? once * taken.withRework() : taken.loadFactor();
        double spread = known.map(UsualJob::spread).orElse(Double.NaN);
        double usual = once * StrictMath.exp(-spread * spread / 2);
        double fit = known.isPresent()
                ? usual * StrictMath.exp(Normal.quantile(policy.coverage()) * spread)
                : past.quantile(taken.repairType(), policy.coverage());
        boolean byFit = policy.rule() == Policy.Rule.COVERAGE || (policy.rule() == Policy.Rule.LARGER && fit > mean);
        return new Target(
                byFit ? fit : mean,
                byFit ? fitBasis(taken, fit, policy, figures) : meanBasis(taken, mean, figures),
                mean,
                usual,
                spread);
    }

    /** Returns hours per quoted hour of jobs without putting right, leaning on the model's mean. */
    private static double leaning(JobTotals taken, double modelled) {
        double own = StrictMath.log(taken.loadFactor() / taken.withRework());
        double log = (taken.jobs() * own + LENT_JOBS * StrictMath.log(modelled)) / (taken.jobs() + LENT_JOBS);
        return StrictMath.exp(log);
    }

    /**
     * Returns what a rival that did better on past jobs asks for instead; this where none did.
     *
     * @param average hours per quoted hour of the last year, as far as they count
     */
    Target orOf(PastMethod used, double average, Figures figures) {
        return switch (used) {
            case KEEP_THE_BOOK -> rival(used, 1, figures);
            case PLAIN_AVERAGE -> rival(used, average, figures);
            default -> this;
        };
    }

    /** Returns this target moved as far as what was not read, rounding or an unsure pace could undo it. */
    Target careful(double factorThatIsSure, Figures figures) {
        if (factorThatIsSure == factor || Double.isNaN(factor)) {
            return this;
        }
        double by = factorThatIsSure / factor;
        String sure = basis + "; held to " + figures.ratio(factorThatIsSure)
                + ", which is sure whatever is in doubt about the hours";
        return new Target(factorThatIsSure, sure, mean * by, usual * by, spread);
    }

    /**
     * Returns this target against a book with other hours.
     *
     * @param todayOverOther hours of today's book per hour of the other
     */
    Target against(double todayOverOther) {
        return todayOverOther == 1
                ? this
                : new Target(factor * todayOverOther, basis, mean * todayOverOther, usual * todayOverOther, spread);
    }

    private Target rival(PastMethod used, double factor, Figures figures) {
        String basis =
                used.words() + ", which did better on past jobs: " + figures.ratio(factor) + " hours per quoted hour";
        return new Target(factor, basis, mean, usual, spread);
    }

    private static String meanBasis(JobTotals taken, double mean, Figures figures) {
        return "what " + taken.words(figures) + " took together: " + figures.ratio(mean) + " hours per quoted hour";
    }

    private static String fitBasis(JobTotals taken, double fit, Policy policy, Figures figures) {
        return figures.percent(policy.coverage()) + " of " + taken.words(figures) + " fit at " + figures.ratio(fit)
                + " hours per quoted hour";
    }
}
