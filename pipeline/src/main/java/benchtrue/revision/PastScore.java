package benchtrue.revision;

import benchtrue.settings.Policy;
import benchtrue.statistics.Pinball;

/**
 * How well quotes by one method held on finished jobs. All but {@code lines} rests on jobs that do not repeat their quote.
 *
 * @param lines quoted lines that could be scored, those of tickets scored by their total counted too
 * @param uncopiedLines how many of them do not repeat their quote
 * @param jobs lines and ticket totals scored
 * @param fitting how many of them took no longer than predicted
 * @param loss pinball loss summed, in hours (Koenker, Bassett 1978)
 * @param predictedHours summed
 * @param actualHours summed
 * @param ownJobs jobs of one line with hours of its own
 * @param ratioLoss pinball loss of their hours per quoted hour summed: each has one vote, however long
 */
public record PastScore(
        int lines,
        int uncopiedLines,
        int jobs,
        int fitting,
        double loss,
        double predictedHours,
        double actualHours,
        int ownJobs,
        double ratioLoss) {
    static final PastScore NONE = new PastScore(0, 0, 0, 0, 0, 0, 0, 0, 0);

    /** Returns the score with lines that repeat their quote. */
    PastScore withCopied(int copies) {
        return plus(new PastScore(copies, 0, 0, 0, 0, 0, 0, 0, 0));
    }

    /** Returns the score with a ticket by its total. */
    PastScore withTotal(int ofLines, double predicted, double actual, double share) {
        int fits = actual <= predicted ? 1 : 0;
        double missed = Pinball.loss(actual, predicted, share);
        return plus(new PastScore(ofLines, ofLines, 1, fits, missed, predicted, actual, 0, 0));
    }

    /** Returns the score with a line that has hours of its own. */
    PastScore withLine(double quoted, double predicted, double actual, double share) {
        double missed = Pinball.loss(actual, predicted, share) / quoted;
        return withTotal(1, predicted, actual, share).plus(new PastScore(0, 0, 0, 0, 0, 0, 0, 1, missed));
    }

    PastScore plus(PastScore other) {
        return new PastScore(
                lines + other.lines,
                uncopiedLines + other.uncopiedLines,
                jobs + other.jobs,
                fitting + other.fitting,
                loss + other.loss,
                predictedHours + other.predictedHours,
                actualHours + other.actualHours,
                ownJobs + other.ownJobs,
                ratioLoss + other.ratioLoss);
    }

    /** Returns the share of jobs that took no longer than predicted; NaN without jobs. */
    public double coverage() {
        return jobs == 0 ? Double.NaN : fitting / (double) jobs;
    }

    /** Returns predicted over actual hours, less 1: above 0 where too much was predicted in all; NaN without hours. */
    public double hoursBias() {
        return actualHours > 0 ? predictedHours / actualHours - 1 : Double.NaN;
    }

    /**
     * Returns what a rule is judged by (methods, section 13), less being better: for break-even the hours by which all jobs
     * together were missed, else the summed loss of hours per quoted hour.
     */
    double missed(Policy.Rule rule) {
        return rule == Policy.Rule.BREAK_EVEN ? StrictMath.abs(predictedHours - actualHours) : ratioLoss;
    }

    /** Returns how many jobs that rests on. */
    int judgedBy(Policy.Rule rule) {
        return rule == Policy.Rule.BREAK_EVEN ? jobs : ownJobs;
    }
}
