package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Ints;
import benchtrue.shop.Tickets;
import benchtrue.statistics.Normal;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** Watches every repair type for slower work, with limits wide enough for all of them together. */
final class WatchDrift {
    /** Distance of the limits that is usual for one chart. */
    private static final double SIGMAS = 3;
    /** False alarms a year that all charts of a shop together may give. */
    private static final double MOST_FALSE_ALARMS = 0.5;

    private static final int YEAR = 365;

    private final JobLines jobs;
    private final JobModel model;
    private final ShopPace pace;
    private final Causes causes;
    private final int[] own;

    /**
     * Watches the residuals of a model.
     *
     * @param own rows of finished jobs with hours of their own, copied ones left out
     * @param pace of the whole shop, which is no repair's own
     * @param causes which jobs take longer whenever they come in
     */
    WatchDrift(JobLines jobs, JobModel model, int[] own, ShopPace pace, Causes causes) {
        this.causes = causes;
        this.pace = pace;
        this.jobs = jobs;
        this.model = model;
        this.own = Arrays.stream(own).filter(this::wasRead).toArray();
    }

    /** Months of which too many hours could not be read say nothing about speed. */
    private boolean wasRead(int line) {
        Tickets tickets = jobs.ledger().tickets();
        int ticket = jobs.ledger().lines().ticket(line);
        int ended = Absent.firstOf(tickets.closed(ticket), tickets.opened(ticket));
        return !jobs.ledger().completeness().touches(tickets.opened(ticket), ended);
    }

    /** Returns the charts, one a repair type with jobs, and what they show. */
    Drift watch() {
        double sigmas = sigmas();
        List<Watched> watched = byType().parallelStream()
                .map(lines -> watched(lines.toArray(), sigmas))
                .toList();
        return new Drift(
                watched.stream().map(Watched::chart).toList(),
                watched.stream().flatMap(type -> type.newest().stream()).toList(),
                jobsAYear() * Normal.upperTail(sigmas));
    }

    private record Watched(DriftChart chart, Optional<Slowing> newest) {}

    private Watched watched(int[] lines, double sigmas) {
        WatchSlowing watch = new WatchSlowing(inOrder(lines), sigmas);
        return new Watched(watch.chart(), watch.newest());
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

    /** Returns the rows of each repair type with jobs. */
    private List<Ints> byType() {
        Ints[] lines = new Ints[jobs.ledger().repairTypes().size()];
        for (int line : own) {
            int type = jobs.ledger().lines().repairType(line);
            lines[type] = lines[type] == null ? new Ints() : lines[type];
            lines[type].add(line);
        }
        return Stream.of(lines).filter(Objects::nonNull).toList();
    }

    /** Puts the rows of one repair type in opening order, then their own. */
    private DriftJobs inOrder(int[] rows) {
        int type = jobs.ledger().lines().repairType(rows[0]);
        long[] order = new long[rows.length];
        for (int i = 0; i < rows.length; i++) {
            order[i] = ((long) jobs.ledger().opened(rows[i]) << Integer.SIZE) + rows[i];
        }
        Arrays.sort(order);
        int[] lines = new int[rows.length];
        int[] days = new int[rows.length];
        double[] residuals = new double[rows.length];
        for (int i = 0; i < order.length; i++) {
            lines[i] = (int) order[i];
            days[i] = jobs.ledger().opened(lines[i]);
            residuals[i] = JobRows.logRatio(jobs, lines[i]) - model.expected(lines[i]);
            residuals[i] += pace.sure() ? StrictMath.log(pace.toToday(days[i])) : 0;
            residuals[i] -= causes.excess(type, lines[i]);
        }
        return new DriftJobs(type, lines, days, residuals);
    }
}
