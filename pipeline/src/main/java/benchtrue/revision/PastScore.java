package benchtrue.revision;

import benchtrue.statistics.Pinball;

/**
 * How well quotes by one method held on finished jobs.
 *
 * @param lines quoted lines behind it, those of tickets scored by their total counted too
 * @param jobs lines and ticket totals scored
 * @param fitting how many of them took no longer than predicted
 * @param loss pinball loss summed, in hours (Koenker, Bassett 1978)
 * @param predictedHours summed
 * @param actualHours summed
 */
public record PastScore(int lines, int jobs, int fitting, double loss, double predictedHours, double actualHours) {
    static final PastScore NONE = new PastScore(0, 0, 0, 0, 0, 0);

    PastScore with(int newLines, double predicted, double actual, double share) {
        return new PastScore(
                lines + newLines,
                jobs + 1,
                fitting + (actual <= predicted ? 1 : 0),
                loss + Pinball.loss(actual, predicted, share),
                predictedHours + predicted,
                actualHours + actual);
    }

    PastScore plus(PastScore other) {
        return new PastScore(
                lines + other.lines,
                jobs + other.jobs,
                fitting + other.fitting,
                loss + other.loss,
                predictedHours + other.predictedHours,
                actualHours + other.actualHours);
    }

    /** Returns the share of jobs that took no longer than predicted; NaN without jobs. */
    public double coverage() {
        return jobs == 0 ? Double.NaN : fitting / (double) jobs;
    }

    /** Returns predicted over actual hours, less 1: above 0 where too much was predicted in all; NaN without hours. */
    public double hoursBias() {
        return actualHours > 0 ? predictedHours / actualHours - 1 : Double.NaN;
    }
}
