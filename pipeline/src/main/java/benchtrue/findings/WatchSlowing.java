package benchtrue.findings;

import benchtrue.statistics.ChangePoint;
import benchtrue.statistics.Cusum;
import benchtrue.statistics.Ewma;
import benchtrue.statistics.Moments;
import benchtrue.statistics.Normal;
import benchtrue.statistics.StudentT;
import java.util.Arrays;
import java.util.Optional;

/**
 * Watches one repair type for slower work (methods, section 6): an EWMA chart (Roberts 1959; NIST/SEMATECH e-Handbook
 * 6.3.2.4) of its jobs in opening order, since closing order favours short jobs; the start of the change by likelihood
 * (Hinkley 1970); borne out, or refuted, by the jobs opened after the signal.
 */
final class WatchSlowing {
    private static final double NEWEST = 0.2;
    private static final double SLACK = 0.5;
    private static final double TAIL = 0.05;
    /** Jobs after a signal below which it waits, and from which on it is settled either way. */
    private static final int ENOUGH_AFTER = 5;

    private static final int PLENTY_AFTER = 20;
    private static final double SURE = 0.01;
    private static final double DOUBTFUL = 0.2;
    private static final int FEWEST_BEFORE = 4;

    private final DriftJobs jobs;
    private final double sigmas;

    /**
     * Watches the jobs of one type with limits at some distance.
     *
     * @param sigmas distance of the limits in standard deviations of the moving average
     */
    WatchSlowing(DriftJobs jobs, double sigmas) {
        this.jobs = jobs;
        this.sigmas = sigmas;
    }

    /** Returns the chart of all jobs. */
    DriftChart chart() {
        double[] scores = SelfStarting.scores(jobs.residuals());
        return new DriftChart(jobs.repairType(), jobs.lines(), jobs.residuals(), scores, ewma(scores));
    }

    /** Returns the newest change that was borne out, else a signal that still waits for jobs; empty without either. */
    Optional<Slowing> newest() {
        Optional<Slowing> found = Optional.empty();
        int base = 0;
        int from = 0;
        int alarm = alarm(base, from);
        while (alarm >= 0) {
            int start = start(base, alarm);
            double chance = chanceOfNoChange(base, start, alarm);
            int after = jobs.size() - alarm - 1;
            if (after < ENOUGH_AFTER || (after < PLENTY_AFTER && chance >= SURE && chance < DOUBTFUL)) {
                return found.isPresent() ? found : Optional.of(slowing(Slowing.Standing.SIGNALLED, base, start, alarm));
            }
            if (chance < SURE) {
                found = Optional.of(slowing(Slowing.Standing.CONFIRMED, base, start, alarm));
                base = start;
            }
            from = alarm + 1;
            alarm = alarm(base, from);
        }
        return found;
    }

    private Ewma ewma(double[] scores) {
        return Ewma.of(scores, 0, 1, NEWEST, sigmas);
    }

    /** Returns the first signal at or after {@code from} against the jobs since {@code base}, or -1. */
    private int alarm(int base, int from) {
        double[] scores = SelfStarting.scores(residuals(base, jobs.size()));
        int at = ewma(Arrays.copyOfRange(scores, from - base, scores.length)).firstAbove();
        return at < 0 ? -1 : from + at;
    }

    private int start(int base, int alarm) {
        double[] values = residuals(base, jobs.size());
        int start = ChangePoint.byLikelihood(values);
        boolean fits = start >= FEWEST_BEFORE
                && base + start <= alarm
                && mean(base + start, jobs.size()) > mean(base, base + start);
        if (fits) {
            return base + start;
        }
        int rise = Cusum.startOfRise(SelfStarting.scores(values), 0, SLACK, alarm - base);
        return base + StrictMath.max(FEWEST_BEFORE, rise);
    }

    /** Chance of jobs at least this slow after the signal if nothing had changed; by Student t, spread pooled. */
    private double chanceOfNoChange(int base, int start, int alarm) {
        Moments before = Moments.of(residuals(base, start));
        Moments after = Moments.of(residuals(alarm + 1, jobs.size()));
        double t = (after.mean() - before.mean()) / error(before, after);
        return StudentT.upperTail(t, before.count() + after.count() - 2.0);
    }

    private Slowing slowing(Slowing.Standing standing, int base, int start, int alarm) {
        Moments before = Moments.of(residuals(base, start));
        Moments since = Moments.of(residuals(start, jobs.size()));
        double change = since.mean() - before.mean();
        double reach = -StudentT.quantile(TAIL, before.count() + since.count() - 2.0) * error(before, since);
        return new Slowing(
                jobs.repairType(),
                standing,
                jobs.days()[start],
                jobs.days()[alarm],
                before.count(),
                since.count(),
                StrictMath.exp(change),
                StrictMath.exp(change - reach),
                StrictMath.exp(change + reach),
                Double.NaN);
    }

    /** Error of the difference of two means with the spread pooled. */
    private static double error(Moments a, Moments b) {
        double squares = (a.count() - 1) * a.variance() + (b.count() > 1 ? (b.count() - 1) * b.variance() : 0);
        double variance = squares / (a.count() + b.count() - 2);
        return StrictMath.sqrt(variance * (1.0 / a.count() + 1.0 / b.count()));
    }

    private double mean(int from, int to) {
        return Moments.of(residuals(from, to)).mean();
    }

    private double[] residuals(int from, int to) {
        return Arrays.copyOfRange(jobs.residuals(), from, to);
    }

    /**
     * Scores each value against the values before it (Hawkins 1987, Journal of Quality Technology 19, self-starting charts): the
     * standardised distance from their mean is Student t, and becomes a normal score. Independent, of mean 0 and spread 1 for
     * normal values without change, however few there are; clipped at 3, so that one wild job alone can't signal.
     */
    static final class SelfStarting {
        private static final int WARM_UP = 8;
        private static final double MOST = 3;

        private SelfStarting() {}

        /** Returns the scores; NaN for the first {@value #WARM_UP}, which only set the level. */
        static double[] scores(double[] values) {
            double[] scores = new double[values.length];
            double mean = 0;
            double squares = 0;
            for (int n = 0; n < values.length; n++) {
                scores[n] = n < WARM_UP ? Double.NaN : score(values[n], mean, squares, n);
                double off = values[n] - mean;
                mean += off / (n + 1);
                squares += off * (values[n] - mean);
            }
            return scores;
        }

        private static double score(double value, double mean, double squares, int before) {
            double spread = StrictMath.sqrt(squares / (before - 1) * (before + 1) / before);
            if (spread == 0) {
                return StrictMath.signum(value - mean) * MOST;
            }
            double t = (value - mean) / spread;
            double upper = StudentT.upperTail(StrictMath.abs(t), before - 1);
            double score = upper == 0 ? MOST : -Normal.quantile(upper);
            return StrictMath.signum(t) * StrictMath.min(MOST, score);
        }
    }
}
