package benchtrue.findings;

import benchtrue.hours.JobLines;
import java.util.List;

/** Studies what one job of each repair type usually takes, without verdicts: what a proposal needs, and no resampling. */
public final class StudyUsualJobs {
    /** Returns one row a repair type code. */
    public List<UsualJob> study(JobLines jobs) {
        return new StudyJobs(jobs, new SpotCopiedQuotes(jobs, OwnHours.of(jobs)).honest()).usualJobs();
    }
}
