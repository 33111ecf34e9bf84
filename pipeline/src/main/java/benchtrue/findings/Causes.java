package benchtrue.findings;

import benchtrue.hours.JobLines;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * What sets jobs of a repair apart from its others.
 *
 * @param named causes that are told from chance, by repair type
 * @param all everything that was looked at
 * @param ownJobs by repair type, jobs with hours of their own, in which they were looked for
 */
record Causes(List<Named> named, List<Circumstance> all, int[] ownJobs) {
    Causes {
        named = List.copyOf(named);
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

    /** Returns by repair type the load factor of its jobs without causes over that of all. */
    double[] others(JobLines jobs) {
        return others(jobs, named, line -> true);
    }

    /**
     * Returns the same of some causes and jobs. Hours that were split from a ticket can't be taken for it: the split lays a
     * repair's excess to all of its jobs.
     */
    static double[] others(JobLines jobs, List<Named> named, IntPredicate counts) {
        int types = jobs.ledger().repairTypes().size();
        double[] plain = new double[types];
        double[] all = new double[types];
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line) && counts.test(line)) {
                int type = jobs.ledger().lines().repairType(line);
                plain[type] += jobs.expectedHours(line);
                all[type] += jobs.expectedHours(line) * StrictMath.exp(sizes(named, type, line));
            }
        }
        Arrays.setAll(plain, type -> all[type] > 0 ? plain[type] / all[type] : 1);
        return plain;
    }

    /** Returns ln of what a line took longer for its causes; a period's is the repair's own change and does not count. */
    double excess(int repairType, int line) {
        return sizes(
                named.stream().filter(cause -> !cause.of(Cause.Kind.PERIOD)).toList(), repairType, line);
    }
}
