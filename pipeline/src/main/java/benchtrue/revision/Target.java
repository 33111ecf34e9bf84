package benchtrue.revision;

import benchtrue.findings.UsualJob;
import benchtrue.format.Figures;
import benchtrue.settings.Policy;
import java.util.Optional;

/**
 * What the policy of the shop, or of the repair's family, asks for, before any guard rail.
 *
 * <p>The mean is what all jobs of the type took together, those logged with their ticket as a whole included, as if similar
 * repairs had lent {@value #LENT_JOBS} jobs at the mean of the model of hours; times what putting right adds. The share that
 * fits is that of {@link FitCurves}, putting right apart.
 *
 * @param factor hours per hour of today's book; NaN without jobs
 * @param basis what it stands on, in words
 * @param mean the mean alone
 * @param fits what a share of jobs stays within
 */
record Target(double factor, String basis, double mean, FitCurve fits) {
    private static final int LENT_JOBS = 8;

    static Target of(JobTotals taken, double once, FitCurve fits, Policy policy, Figures figures) {
        double mean = once * taken.withRework();
        double fit = fits.at(policy.coverage());
        boolean byFit = policy.rule() == Policy.Rule.COVERAGE || (policy.rule() == Policy.Rule.LARGER && fit > mean);
        return new Target(
                byFit ? fit : mean,
                byFit ? fitBasis(taken, fit, policy, figures) : meanBasis(taken, mean, figures),
                mean,
                fits);
    }

    /** Returns hours per quoted hour without putting right: what all jobs took together, leaning on the model's mean. */
    static double once(JobTotals taken, Optional<UsualJob> job) {
        double own = taken.loadFactor() / taken.withRework();
        return job.filter(model -> taken.jobs() > 0 && Double.isFinite(model.mean()))
                .map(model -> leaning(taken.jobs(), own, model.mean()))
                .orElse(own);
    }

    private static double leaning(int jobs, double own, double modelled) {
        double log = jobs * StrictMath.log(own) + LENT_JOBS * StrictMath.log(modelled);
        return StrictMath.exp(log / (jobs + LENT_JOBS));
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

    /** Returns this target moved as far as what was not read, rounding or an unsure pace could undo it; what it rests on stays. */
    Target careful(double factorThatIsSure, Figures figures) {
        if (factorThatIsSure == factor || Double.isNaN(factor)) {
            return this;
        }
        String sure = basis + "; held to " + figures.ratio(factorThatIsSure)
                + ", which is sure whatever is in doubt about the hours";
        return new Target(factorThatIsSure, sure, mean, fits);
    }

    /** Returns the same, said to be one figure for small and large quotes that differ. */
    Target forAllSizes() {
        String words = basis + "; small and large quotes differ: see the two lines drafted for them";
        return new Target(factor, words, mean, fits);
    }

    /**
     * Returns this target against a book with other hours.
     *
     * @param todayOverOther hours of today's book per hour of the other
     */
    Target against(double todayOverOther) {
        return todayOverOther == 1
                ? this
                : new Target(factor * todayOverOther, basis, mean * todayOverOther, fits.times(todayOverOther));
    }

    private Target rival(PastMethod used, double factor, Figures figures) {
        String basis =
                used.words() + ", which did better on past jobs: " + figures.ratio(factor) + " hours per quoted hour";
        return new Target(factor, basis, mean, fits);
    }

    private static String meanBasis(JobTotals taken, double mean, Figures figures) {
        return "what " + taken.words(figures) + " took together: " + figures.ratio(mean) + " hours per quoted hour";
    }

    private static String fitBasis(JobTotals taken, double fit, Policy policy, Figures figures) {
        return figures.percent(policy.coverage()) + " of " + taken.words(figures) + " fit at " + figures.ratio(fit)
                + " hours per quoted hour";
    }
}
