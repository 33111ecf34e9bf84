package benchtrue.findings;

import benchtrue.hours.JobLines;
import java.util.List;

/** Studies what one job of each repair type usually takes, without verdicts: what a proposal needs, and no resampling. */
public final class StudyUsualJobs {
    /**
     * What was studied.
     *
     * @param usual one row a repair type code, at today's pace
     * @param surelyOwn jobs with hours of their own, copied ones left out
     * @param measuredPerAll by code, load of jobs that are no copies of their quotes over that of all
     */
    public record Studied(List<UsualJob> usual, ShopPace pace, SurelyOwnJobs surelyOwn, double[] measuredPerAll) {}

    /** Studies a shop's jobs. */
    public Studied study(JobLines jobs) {
        SpotCopiedQuotes copies = new SpotCopiedQuotes(jobs, OwnHours.of(jobs));
        SurelyOwnJobs own = copies.surelyOwn();
        ShopPace pace = ShopPace.of(jobs, own.rows());
        List<UsualJob> usual = new StudyJobs(jobs, own.rows(), pace).usualJobs();
        return new Studied(usual, pace, own, copies.measuredPerAll());
    }
}
