package benchtrue.findings;

import benchtrue.hours.JobLines;

/**
 * The finished jobs that tell how long the work took: hours their own, and probably not copied from the quote.
 *
 * @param rows of their lines, ascending
 * @param copiedTickets by ticket, whether its hours more likely repeat its quote than not
 */
public record SurelyOwnJobs(int[] rows, boolean[] copiedTickets) {
    /** Picks them from a shop's jobs. */
    public static SurelyOwnJobs of(JobLines jobs) {
        return new SpotCopiedQuotes(jobs, OwnHours.of(jobs)).surelyOwn();
    }
}
