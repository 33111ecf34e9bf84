package benchtrue.revision;

import benchtrue.hours.JobLines;

/**
 * Which judged jobs tell whether a job fits its quote. Where a repair type has at least {@value #ENOUGH} jobs with hours
 * surely their own, only those count: hours dealt from a whole ticket scatter too little.
 */
public final class FitEvidence {
    private static final int ENOUGH = 8;
    private final JobLines jobs;
    private final boolean[] ownHours;
    private final int[] own;

    private FitEvidence(JobLines jobs, int[] rows) {
        this.jobs = jobs;
        ownHours = new boolean[jobs.size()];
        own = new int[jobs.ledger().repairTypes().size()];
        for (int line : rows) {
            ownHours[line] = true;
            own[jobs.ledger().lines().repairType(line)]++;
        }
    }

    /**
     * Takes all jobs of a shop.
     *
     * @param own rows of jobs with hours of their own, copied ones left out
     */
    public static FitEvidence of(JobLines jobs, int[] own) {
        return new FitEvidence(jobs, own);
    }

    /** Returns whether a line is judged and has a quote against today's book. */
    boolean judged(int line) {
        return jobs.judged(line) && jobs.todayQuotedHours(line) > 0;
    }

    /** Returns whether a line tells how often jobs of its repair type fit their quote. */
    public boolean counts(int line) {
        return judged(line) && (own[jobs.ledger().lines().repairType(line)] < ENOUGH || ownHours[line]);
    }
}
