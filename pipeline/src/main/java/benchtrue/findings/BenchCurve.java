package benchtrue.findings;

import benchtrue.statistics.KaplanMeier;
import benchtrue.statistics.Normal;

/**
 * How many of a repair type's jobs are still on the bench after so many hours per quoted hour: as they went (Kaplan, Meier
 * 1958) and as the model of hours has it, each with open jobs counted at their hours so far and with finished jobs alone.
 *
 * @param usual what such a job usually takes
 * @param withOpen the curve of all jobs that count
 * @param openSoFar hours so far per quoted hour of the open jobs that count, ascending
 */
public record BenchCurve(UsualJob usual, KaplanMeier withOpen, KaplanMeier finishedOnly, double[] openSoFar) {

    /** Returns the share that the model has still on the bench after so many hours per quoted hour, above 0. */
    public double modelled(double hoursPerQuotedHour) {
        return share(hoursPerQuotedHour, usual.typical());
    }

    /** Returns the same by the model of finished jobs alone. */
    public double modelledWithoutOpen(double hoursPerQuotedHour) {
        return share(hoursPerQuotedHour, usual.withoutOpen());
    }

    private double share(double hoursPerQuotedHour, double typical) {
        return Normal.upperTail(StrictMath.log(hoursPerQuotedHour / typical) / usual.spread());
    }
}
