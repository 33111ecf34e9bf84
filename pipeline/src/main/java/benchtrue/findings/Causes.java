package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.hours.SplitAgain;
import benchtrue.shop.Hours;
import java.util.Arrays;
import java.util.List;

/**
 * What sets jobs of a repair apart from its others.
 *
 * @param named causes that are told from chance, by repair type
 * @param all everything that was looked at
 * @param ownJobs by repair type, jobs with hours of their own, in which they were looked for
 * @param split of tickets as wholes, causes known
 */
record Causes(List<Named> named, List<Circumstance> all, int[] ownJobs, SplitAgain split) {
    Causes {
        named = List.copyOf(named);
    }

    /** Returns them with the tickets of a shop split in their knowledge. */
    static Causes of(List<Named> named, List<Circumstance> all, int[] ownJobs, JobLines jobs) {
        double[] times = new double[jobs.size()];
        Arrays.setAll(
                times, line -> StrictMath.exp(sizes(named, jobs.ledger().lines().repairType(line), line)));
        return new Causes(named, all, ownJobs, jobs.model().again(times));
    }

    /**
     * A cause.
     *
     * @param repairType code of the repair type
     * @param circumstance which jobs
     * @param size ln of how much longer these take than the others
     * @param error its standard error
     * @param freedom degrees of freedom of that
     * @param adjustedP as {@link Cause#adjustedP}
     */
    record Named(
            int repairType, Circumstance circumstance, double size, double error, double freedom, double adjustedP) {
        boolean has(int line) {
            return circumstance.holds().test(line);
        }

        Named longer(double by, double itsError) {
            return new Named(repairType, circumstance, size + by, itsError, freedom, adjustedP);
        }

        boolean of(Cause.Kind kind) {
            return circumstance.kind() == kind;
        }
    }

    List<Named> of(int repairType) {
        return named.stream().filter(cause -> cause.repairType() == repairType).toList();
    }

    /** Returns ln of what a line took longer for its causes. */
    double sizes(int repairType, int line) {
        return sizes(named, repairType, line);
    }

    private static double sizes(List<Named> named, int repairType, int line) {
        double sum = 0;
        for (Named cause : named) {
            sum += cause.repairType() == repairType && cause.has(line) ? cause.size() : 0;
        }
        return sum;
    }

    /** Returns hours that a line took with those that put it right, tickets as wholes split in knowledge of the causes. */
    double hours(JobLines jobs, int line) {
        return (CauseRows.split(jobs, line) ? split.taken()[line] : Hours.of(jobs.actualSeconds(line)))
                + Hours.of(jobs.reworkSeconds(line));
    }

    /** Returns ln of what a line took longer for its causes; a period's is the repair's own change and does not count. */
    double excess(int repairType, int line) {
        return sizes(
                named.stream().filter(cause -> !cause.of(Cause.Kind.PERIOD)).toList(), repairType, line);
    }
}
