package benchtrue.findings;

import benchtrue.hours.JobLines;

/** Picks the finished jobs that tell how long the work took: hours their own, and probably not copied from the quote. */
public final class SurelyOwnJobs {
    /** Returns the rows of their lines, ascending. */
    public int[] pick(JobLines jobs) {
        return new SpotCopiedQuotes(jobs, OwnHours.of(jobs)).honest();
    }
}
