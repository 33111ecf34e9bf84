package benchtrue.findings;

import benchtrue.hours.EntryPlaces;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitEvidence;
import benchtrue.shop.Absent;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.Ints;
import benchtrue.shop.LineState;
import benchtrue.shop.QuoteBasis;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.Wait;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Open jobs: those whose hours so far say how long they take at least, and those that say nothing. A job counts where
 * every hour on it names it and somebody worked on it lately; one that lies idle, waits, or is logged with its ticket as a
 * whole stopped for reasons that have to do with its length, and would bend the factors upward.
 *
 * @param used rows of the open jobs that count, ascending
 * @param leftOut rows of the other open jobs of repair types in the book; those finished and not yet collected stand in neither
 */
record OpenJobs(int[] used, int[] leftOut) {
    private static final int LATELY = 14;

    /** Returns the open jobs of a shop. */
    static OpenJobs of(JobLines jobs) {
        int[] lastWorked = lastWorked(jobs);
        boolean[] waiting = waiting(jobs);
        Ints used = new Ints();
        Ints leftOut = new Ints();
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.state(line) != LineState.OPEN || !ordinary(jobs, line) || finished(jobs, line)) {
                continue;
            }
            boolean own = jobs.evidence(line) == SplitEvidence.LOGGED;
            boolean active = Absent.has(lastWorked[line])
                    && lastWorked[line] > jobs.ledger().asOf() - LATELY
                    && !waiting[jobs.ledger().lines().ticket(line)];
            (own && active ? used : leftOut).add(line);
        }
        return new OpenJobs(used.toArray(), leftOut.toArray());
    }

    /** Returns the same jobs where none of them counts, for want of finished ones to hold them against. */
    OpenJobs noneUsed() {
        int[] all = IntStream.concat(Arrays.stream(used), Arrays.stream(leftOut))
                .sorted()
                .toArray();
        return new OpenJobs(new int[0], all);
    }

    /** An instrument that only waits for its owner is on the bench no more, and its hours are whole. */
    private static boolean finished(JobLines jobs, int line) {
        int finished = jobs.ledger().tickets().finished(jobs.ledger().lines().ticket(line));
        return Absent.has(finished) && finished <= jobs.ledger().asOf();
    }

    private static boolean ordinary(JobLines jobs, int line) {
        QuotedLines lines = jobs.ledger().lines();
        ChargeKind kind = lines.chargeKind(line);
        return jobs.todayQuotedHours(line) > 0
                && (kind == ChargeKind.REPAIR || kind == ChargeKind.PACKAGE)
                && lines.quoteBasis(line) != QuoteBasis.TIME
                && lines.reworkOf(line) == Absent.INDEX
                && lines.reworkOfLine(line) == Absent.INDEX
                && jobs.ledger().tickets().reworkOf(lines.ticket(line)) == Absent.INDEX;
    }

    private static int[] lastWorked(JobLines jobs) {
        int[] last = new int[jobs.size()];
        Arrays.fill(last, Absent.DAY);
        TimeEntries time = jobs.ledger().time();
        for (int entry = 0; entry < time.size(); entry++) {
            int line = jobs.places().place(entry) == EntryPlaces.Place.ON_LINE
                    ? jobs.places().line(entry)
                    : Absent.INDEX;
            if (line != Absent.INDEX) {
                last[line] = StrictMath.max(last[line], time.workDay(entry));
            }
        }
        return last;
    }

    private static boolean[] waiting(JobLines jobs) {
        boolean[] waiting = new boolean[jobs.ledger().tickets().size()];
        int asOf = jobs.ledger().asOf();
        for (Wait wait : jobs.ledger().waits()) {
            waiting[wait.ticket()] |= wait.from() <= asOf && (!Absent.has(wait.to()) || wait.to() >= asOf);
        }
        return waiting;
    }
}
