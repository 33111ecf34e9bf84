package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.hours.SplitEvidence;
import java.util.stream.IntStream;

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

    /** Returns the rows of finished jobs that were dealt hours of a ticket that repeats no quote, ascending. */
    public int[] dealt(JobLines jobs) {
        return IntStream.range(0, jobs.size())
                .filter(line -> jobs.judged(line) && jobs.evidence(line) != SplitEvidence.LOGGED)
                .filter(line -> jobs.actualSeconds(line) > 0 && jobs.todayQuotedHours(line) > 0)
                .filter(line -> !copiedTickets[jobs.ledger().lines().ticket(line)])
                .toArray();
    }
}
