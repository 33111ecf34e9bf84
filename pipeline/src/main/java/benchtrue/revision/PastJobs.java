package benchtrue.revision;

import benchtrue.findings.ShopPace;
import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Tickets;
import benchtrue.statistics.Quantile;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Hours per quoted hour of the jobs of each repair type that tell, ascending, and how many hours a year it is quoted. */
final class PastJobs {
    private static final int YEAR = 365;
    private final List<double[]> ratios;
    private final double[] yearlyHours;
    private final double[] yearlyTaken;

    /**
     * Takes a shop's jobs.
     *
     * @param own rows of jobs with hours of their own, copied ones left out
     * @param pace brings the hours of each job to today; what the last year took stays as it was
     */
    PastJobs(JobLines jobs, int[] own, ShopPace pace) {
        FitEvidence evidence = FitEvidence.of(jobs, own);
        int types = jobs.ledger().repairTypes().size();
        yearlyHours = new double[types];
        yearlyTaken = new double[types];
        List<List<Double>> found = new ArrayList<>();
        IntStream.range(0, types).forEach(type -> found.add(new ArrayList<>()));
        for (int line = 0; line < jobs.size(); line++) {
            int type = jobs.ledger().lines().repairType(line);
            if (evidence.counts(line)) {
                int opened =
                        jobs.ledger().tickets().opened(jobs.ledger().lines().ticket(line));
                double hours = Hours.of(jobs.actualSeconds(line)) * (pace.sure() ? pace.toToday(opened) : 1);
                found.get(type).add(hours / jobs.todayQuotedHours(line));
            }
            if (evidence.judged(line) && ended(jobs, line) > jobs.ledger().asOf() - YEAR) {
                yearlyHours[type] += jobs.todayQuotedHours(line);
                yearlyTaken[type] += Hours.of(jobs.actualSeconds(line));
            }
        }
        ratios = found.stream()
                .map(rows -> Quantile.sorted(
                        rows.stream().mapToDouble(Double::doubleValue).toArray()))
                .toList();
    }

    private static int ended(JobLines jobs, int line) {
        Tickets tickets = jobs.ledger().tickets();
        int ticket = jobs.ledger().lines().ticket(line);
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

    /** Returns how many jobs tell it. */
    int count(int type) {
        return ratios.get(type).length;
    }

    /** Returns hours quoted against today's book on jobs that ended in the last 365 days. */
    double yearlyHours(int type) {
        return yearlyHours[type];
    }

    /** Returns hours per quoted hour of jobs that ended in the last 365 days, taken together; NaN without any. */
    double yearlyAverage(int type) {
        return yearlyTaken[type] / yearlyHours[type];
    }
}
