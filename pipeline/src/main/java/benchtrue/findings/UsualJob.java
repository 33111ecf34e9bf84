package benchtrue.findings;

/**
 * What one job of a repair type usually takes, from the model of hours. Factors are hours per quoted hour against today's
 * book; all NaN where the shop has no job at all to go by.
 *
 * @param repairType code of the repair type
 * @param jobs finished jobs with hours of their own
 * @param openUsed open jobs counted as taking longer than their hours so far
 * @param openLeftOut open jobs that say nothing yet: idle, waiting, or logged with their ticket as a whole
 * @param typical half of such jobs take more, half less, leaning on similar repairs; open jobs counted
 * @param lower lower end of its 90 % interval
 * @param upper upper end
 * @param withoutOpen the same with open jobs left out
 * @param mean what such jobs take on average, in agreement with the shop's total hours
 * @param spread standard deviation of ln(hours) of one job about the usual
 * @param atBook hours of a usual job per hour of today's book, if quoted at the book, at the shop's usual mix of technicians
 *     and nobody's habit of quoting
 */
public record UsualJob(
        int repairType,
        int jobs,
        int openUsed,
        int openLeftOut,
        double typical,
        double lower,
        double upper,
        double withoutOpen,
        double mean,
        double spread,
        double atBook) {
    /** Returns what it takes at another pace, as a factor of this one. */
    public UsualJob atPace(double factor) {
        return new UsualJob(
                repairType,
                jobs,
                openUsed,
                openLeftOut,
                typical * factor,
                lower * factor,
                upper * factor,
                withoutOpen * factor,
                mean * factor,
                spread,
                atBook * factor);
    }

    UsualJob withSpread(double other) {
        return new UsualJob(
                repairType, jobs, openUsed, openLeftOut, typical, lower, upper, withoutOpen, mean, other, atBook);
    }
}
