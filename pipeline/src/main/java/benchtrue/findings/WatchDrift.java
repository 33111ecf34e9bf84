package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.shop.Tickets;
import benchtrue.statistics.Normal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Watches every repair type for slower work, with limits wide enough for all of them together. */
final class WatchDrift {
    /** Distance of the limits that is usual for one chart. */
    private static final double SIGMAS = 3;
    /** False alarms a year that all charts of a shop together may give. */
    private static final double MOST_FALSE_ALARMS = 0.5;

    private static final int YEAR = 365;

    private final JobLines jobs;
    private final JobModel model;
    private final int[] own;

    /**
     * Watches the residuals of a model.
     *
     * @param own rows of finished jobs with hours of their own, copied ones left out
     */
    WatchDrift(JobLines jobs, JobModel model, int[] own) {
        this.jobs = jobs;
        this.model = model;
        this.own = own;
    }

    /** Returns the charts, one a repair type with jobs, and what they show. */
    Drift watch() {
        double sigmas = sigmas();
        List<DriftChart> charts = new ArrayList<>();
        List<Slowing> slowings = new ArrayList<>();
        for (DriftJobs ofType : byType()) {
            WatchSlowing watch = new WatchSlowing(ofType, sigmas);
            charts.add(watch.chart());
            watch.newest().ifPresent(slowings::add);
        }
        return new Drift(charts, slowings, jobsAYear() * Normal.upperTail(sigmas));
    }

    /**
     * A chart gives a false alarm at one job in about 1.5 / P(Z > L) for limits at L = 3, fewer for wider ones (by the Markov
     * chain of Lucas and Saccucci 1990 for newest weight 0.2, upper limit only), so P(Z > L) jobs is an upper bound.
     */
    private double sigmas() {
        double jobsAYear = jobsAYear();
        return jobsAYear * Normal.upperTail(SIGMAS) <= MOST_FALSE_ALARMS
                ? SIGMAS
                : -Normal.quantile(MOST_FALSE_ALARMS / jobsAYear);
    }

    private double jobsAYear() {
        Tickets tickets = jobs.ledger().tickets();
        int newest = Integer.MIN_VALUE;
        int oldest = Integer.MAX_VALUE;
        for (int line : own) {
            int opened = tickets.opened(jobs.ledger().lines().ticket(line));
            newest = StrictMath.max(newest, opened);
            oldest = StrictMath.min(oldest, opened);
        }
        return own.length == 0 ? 0 : own.length * (double) YEAR / StrictMath.max(YEAR, newest - oldest + 1);
    }

    private List<DriftJobs> byType() {
        int types = jobs.ledger().repairTypes().size();
        List<List<Integer>> lines = new ArrayList<>();
        IntStream.range(0, types).forEach(type -> lines.add(new ArrayList<>()));
        for (int line : own) {
            lines.get(jobs.ledger().lines().repairType(line)).add(line);
        }
        List<DriftJobs> result = new ArrayList<>();
        for (int type = 0; type < types; type++) {
            if (!lines.get(type).isEmpty()) {
                result.add(inOrder(type, lines.get(type)));
            }
        }
        return result;
    }

    private DriftJobs inOrder(int type, List<Integer> rows) {
        rows.sort(Comparator.comparingInt(this::opened).thenComparingInt(Integer::intValue));
        int[] lines = rows.stream().mapToInt(Integer::intValue).toArray();
        int[] days = rows.stream().mapToInt(this::opened).toArray();
        double[] residuals = rows.stream()
                .mapToDouble(line -> JobRows.logRatio(jobs, line) - model.expected(line))
                .toArray();
        return new DriftJobs(type, lines, days, residuals);
    }

    private int opened(int line) {
        return jobs.ledger().tickets().opened(jobs.ledger().lines().ticket(line));
    }
}
