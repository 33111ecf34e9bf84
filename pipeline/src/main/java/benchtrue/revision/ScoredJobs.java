package benchtrue.revision;

import benchtrue.findings.SurelyOwnJobs;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitEvidence;
import benchtrue.reconcile.Completeness;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Ints;
import benchtrue.shop.LineState;
import benchtrue.shop.Tickets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Finished jobs that a prediction can be held against, by the day of their quote: a line whose hours are its own, or the lines
 * of a ticket that share hours, by their total. Split hours are never scored one by one: they flatter whoever dealt them.
 */
final class ScoredJobs {
    private final JobLines jobs;
    private final List<Job> all = new ArrayList<>();
    private final boolean[] own;
    private final boolean[] copied;

    /**
     * One job.
     *
     * @param quotedOn day of its first quote
     * @param lines rows of its lines
     * @param hours what they took together
     * @param log what its hours say
     */
    record Job(int quotedOn, int[] lines, double hours, Log log) {}

    /** What the hours of a job say. */
    enum Log {
        /** How long its one line took. */
        OF_THE_LINE,
        /** How long the lines of its ticket took together. */
        OF_THE_TICKET,
        /** The quote over again. */
        COPIED
    }

    private ScoredJobs(JobLines jobs) {
        this.jobs = jobs;
        own = new boolean[jobs.size()];
        SurelyOwnJobs surely = SurelyOwnJobs.of(jobs);
        for (int line : surely.rows()) {
            own[line] = true;
        }
        copied = surely.copiedTickets();
        int tickets = jobs.ledger().tickets().size();
        int[] starts = jobs.ledger().lines().starts(tickets);
        Completeness logged = jobs.ledger().completeness();
        for (int ticket = 0; ticket < tickets; ticket++) {
            if (!logged.touches(jobs.ledger().tickets().opened(ticket), ended(ticket))) {
                add(starts[ticket], starts[ticket + 1]);
            }
        }
        all.sort(Comparator.comparingInt(Job::quotedOn));
    }

    static ScoredJobs of(JobLines jobs) {
        return new ScoredJobs(jobs);
    }

    private void add(int from, int to) {
        Ints together = new Ints();
        boolean whole = true;
        long seconds = 0;
        for (int line = from; line < to; line++) {
            if (own[line]) {
                all.add(job(new int[] {line}, jobs.actualSeconds(line), Log.OF_THE_LINE));
            } else if (predictable(line)
                    && jobs.evidence(line) == SplitEvidence.LOGGED
                    && jobs.actualSeconds(line) > 0) {
                all.add(job(new int[] {line}, jobs.actualSeconds(line), Log.COPIED));
            } else if (jobs.state(line) == LineState.CLOSED && jobs.evidence(line) != SplitEvidence.LOGGED) {
                together.add(line);
                whole &= predictable(line) || jobs.actualSeconds(line) == 0;
                seconds += jobs.actualSeconds(line);
            }
        }
        int[] lines =
                Arrays.stream(together.toArray()).filter(this::predictable).toArray();
        if (whole && seconds > 0) {
            boolean repeats = copied[jobs.ledger().lines().ticket(lines[0])];
            all.add(job(lines, seconds, repeats ? Log.COPIED : Log.OF_THE_TICKET));
        }
    }

    private Job job(int[] lines, long seconds, Log log) {
        return new Job(
                Arrays.stream(lines).map(jobs.ledger()::quotedOn).min().getAsInt(), lines, Hours.of(seconds), log);
    }

    private int ended(int ticket) {
        Tickets tickets = jobs.ledger().tickets();
        return Absent.firstOf(tickets.finished(ticket), Absent.firstOf(tickets.closed(ticket), tickets.opened(ticket)));
    }

    private boolean predictable(int line) {
        return jobs.judged(line) && jobs.todayQuotedHours(line) > 0;
    }

    /** Returns the jobs quoted from a day on and before another, in order of their quotes. */
    List<Job> quoted(int from, int before) {
        return all.subList(place(from), place(before));
    }

    private int place(int day) {
        int low = 0;
        int high = all.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (all.get(middle).quotedOn() < day) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /**
     * Returns how predictions held.
     *
     * @param factors hours per hour of the book then
     * @param bookThen by code, hours of the book then per hour of today's
     * @param shares by code, of jobs that should fit; a ticket scored by its total takes its lines' by their predicted hours
     */
    PastScore score(List<Job> scored, Factors factors, double[] bookThen, double[] shares) {
        PastScore score = PastScore.NONE;
        for (Job job : scored) {
            double quoted = 0;
            double predicted = 0;
            double first = shares[jobs.ledger().lines().repairType(job.lines()[0])];
            double beyond = 0;
            for (int line : job.lines()) {
                int type = jobs.ledger().lines().repairType(line);
                double then = jobs.todayQuotedHours(line) * bookThen[type];
                quoted += then;
                double hours = then * (Double.isNaN(then) ? 1 : factors.of(type, then));
                predicted += hours;
                beyond += hours * (shares[type] - first);
            }
            double share = predicted > 0 ? first + beyond / predicted : first;
            // A repair type that stood in no book then could not have been predicted.
            score = Double.isNaN(predicted) ? score : with(score, job, quoted, predicted, share);
        }
        return score;
    }

    private static PastScore with(PastScore score, Job job, double quoted, double predicted, double share) {
        return switch (job.log()) {
            case OF_THE_LINE -> score.withLine(quoted, predicted, job.hours(), share);
            case OF_THE_TICKET -> score.withTotal(job.lines().length, predicted, job.hours(), share);
            case COPIED -> score.withCopied(job.lines().length);
        };
    }
}
