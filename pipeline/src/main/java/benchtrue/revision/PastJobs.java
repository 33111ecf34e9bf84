package benchtrue.revision;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.LineState;
import benchtrue.shop.Tickets;
import benchtrue.statistics.Quantile;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Hours per quoted hour of the judged jobs of each repair type, ascending, and how many hours a year the type is quoted.
 * Where at least {@value #ENOUGH} jobs have hours surely their own, only those count: dealt hours scatter too little.
 */
final class PastJobs {
    private static final int ENOUGH = 8;
    private static final int YEAR = 365;
    private final JobLines jobs;
    private final int[] beside;
    private final List<double[]> ratios = new ArrayList<>();
    private final double[] yearlyHours;

    PastJobs(JobLines jobs) {
        this.jobs = jobs;
        beside = new int[jobs.ledger().tickets().size()];
        yearlyHours = new double[jobs.ledger().repairTypes().size()];
        List<List<Integer>> rows = new ArrayList<>();
        IntStream.range(0, yearlyHours.length).forEach(type -> rows.add(new ArrayList<>()));
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.state(line) == LineState.CLOSED || jobs.state(line) == LineState.OPEN) {
                beside[ticket(line)]++;
            }
            if (jobs.judged(line) && jobs.todayQuotedHours(line) > 0) {
                rows.get(jobs.ledger().lines().repairType(line)).add(line);
            }
        }
        rows.forEach(this::addType);
    }

    private void addType(List<Integer> lines) {
        double[] own = ratios(lines, this::ownHours);
        ratios.add(own.length >= ENOUGH ? own : ratios(lines, line -> true));
        for (int line : lines) {
            if (ended(ticket(line)) > jobs.ledger().asOf() - YEAR) {
                yearlyHours[jobs.ledger().lines().repairType(line)] += jobs.todayQuotedHours(line);
            }
        }
    }

    private double[] ratios(List<Integer> lines, IntPredicate counted) {
        return Quantile.sorted(lines.stream()
                .mapToInt(Integer::intValue)
                .filter(counted)
                .mapToDouble(line -> Hours.of(jobs.actualSeconds(line)) / jobs.todayQuotedHours(line))
                .toArray());
    }

    private boolean ownHours(int line) {
        return jobs.splitSeconds(line) == 0 || beside[ticket(line)] == 1;
    }

    private int ticket(int line) {
        return jobs.ledger().lines().ticket(line);
    }

    private int ended(int ticket) {
        Tickets tickets = jobs.ledger().tickets();
        return Absent.firstOf(tickets.closed(ticket), tickets.opened(ticket));
    }

    /** Returns the hours per quoted hour that a share of the jobs stayed within; NaN without jobs. */
    double quantile(int type, double share) {
        return Quantile.of(ratios.get(type), share);
    }

    /** Returns the share of jobs that took no more than some hours per quoted hour; NaN without jobs. */
    double within(int type, double ratio) {
        double[] sorted = ratios.get(type);
        int fit = 0;
        while (fit < sorted.length && sorted[fit] <= ratio) {
            fit++;
        }
        return Double.isNaN(ratio) ? Double.NaN : fit / (double) sorted.length;
    }

    /** Returns hours quoted against today's book on jobs that ended in the last 365 days. */
    double yearlyHours(int type) {
        return yearlyHours[type];
    }
}
