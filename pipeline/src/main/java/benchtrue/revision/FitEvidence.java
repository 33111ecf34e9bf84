package benchtrue.revision;

import benchtrue.hours.JobLines;
import benchtrue.shop.LineState;

/**
 * Which judged jobs tell whether a job fits its quote. Where a repair type has at least {@value #ENOUGH} jobs with hours
 * surely their own, only those count: hours dealt from a whole ticket scatter too little.
 */
public final class FitEvidence {
    private static final int ENOUGH = 8;
    private final JobLines jobs;
    private final int[] beside;
    private final int[] own;

    private FitEvidence(JobLines jobs) {
        this.jobs = jobs;
        beside = new int[jobs.ledger().tickets().size()];
        own = new int[jobs.ledger().repairTypes().size()];
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.state(line) == LineState.CLOSED || jobs.state(line) == LineState.OPEN) {
                beside[jobs.ledger().lines().ticket(line)]++;
            }
        }
        for (int line = 0; line < jobs.size(); line++) {
            if (judged(line) && ownHours(line)) {
                own[jobs.ledger().lines().repairType(line)]++;
            }
        }
    }

    public static FitEvidence of(JobLines jobs) {
        return new FitEvidence(jobs);
    }

    /** Returns whether a line is judged and has a quote against today's book. */
    boolean judged(int line) {
        return jobs.judged(line) && jobs.todayQuotedHours(line) > 0;
    }

    /** Returns whether a line tells how often jobs of its repair type fit their quote. */
    public boolean counts(int line) {
        return judged(line) && (own[jobs.ledger().lines().repairType(line)] < ENOUGH || ownHours(line));
    }

    private boolean ownHours(int line) {
        return jobs.splitSeconds(line) == 0 || beside[jobs.ledger().lines().ticket(line)] == 1;
    }
}
