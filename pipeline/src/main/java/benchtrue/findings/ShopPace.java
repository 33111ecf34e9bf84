package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.statistics.ChangePoint;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * One clock for the shop: whether all repairs together take longer, or less long, than they used to, so that every load can be
 * brought to the as-of date.
 *
 * <p>y = ln(hours / quote) = repair + slope x (day opened), over jobs with hours of their own; the slope's error is clustered by
 * ticket (Liang, Zeger 1986). A step is told from a slope by comparing both at the likeliest point of change (Hinkley 1970) with
 * the price of further parameters (Schwarz 1978). Beyond two errors it counts, and only where it still does so without the repair
 * that bears most of it. What one repair does alone, beyond {@value #ALONE} errors of what the others do, is that repair's own slowing
 * and tells nothing of the shop. Between one error and two nothing is brought to
 * today, but every range reaches as far as the pace may have moved the load.
 */
public final class ShopPace {
    /** Errors beyond which a pace counts: chance alone passes it in one shop of twenty. */
    private static final double SURE = 2;

    /** Errors beyond which it can't be left out of account: a range must hold with it and without. */
    private static final double PERHAPS = 1;

    /** Errors beyond which a repair changes otherwise than all others: one of some thirty passes it by chance in one shop of ten. */
    private static final double ALONE = 3;

    /** A step's day is looked for among all days, which costs about as much as another parameter. */
    private static final int PARAMETERS_OF_A_STEP = 2;

    private static final int NEVER = Integer.MIN_VALUE;
    private static final int FEWEST = 60;
    private static final double YEAR = 365.25;
    private static final double SHORTEST = 0.75;

    /** Nothing shows that the shop's pace changes. */
    public static final ShopPace STEADY = new ShopPace(false, 0, 0, 0, NEVER);

    private final double change;
    private final double error;
    private final int asOf;
    private final int stepDay;
    private final boolean sure;

    private ShopPace(boolean sure, double change, double error, int asOf, int stepDay) {
        this.sure = sure;
        this.change = change;
        this.error = error;
        this.asOf = asOf;
        this.stepDay = stepDay;
    }

    /**
     * Measures a shop's pace.
     *
     * @param rows jobs with hours of their own, copied ones left out
     */
    public static ShopPace of(JobLines jobs, int[] rows) {
        int asOf = jobs.ledger().asOf();
        int[] order = IntStream.of(rows)
                .boxed()
                .sorted(Comparator.comparingInt((Integer line) -> jobs.ledger().opened(line))
                        .thenComparingInt(line -> line))
                .mapToInt(Integer::intValue)
                .toArray();
        if (order.length < FEWEST
                || jobs.ledger().opened(order[order.length - 1]) - jobs.ledger().opened(order[0]) < SHORTEST * YEAR) {
            return STEADY;
        }
        double[] y = new double[order.length];
        double[] age = new double[order.length];
        for (int i = 0; i < order.length; i++) {
            y[i] = JobRows.logRatio(jobs, order[i]);
            age[i] = (jobs.ledger().opened(order[i]) - asOf) / YEAR;
        }
        withinRepairs(jobs, order, y);
        double[] x = age.clone();
        withinRepairs(jobs, order, x);
        Fit slope = Fit.of(jobs, order, x, y);
        IntPredicate alone = only(jobs, order, mostUnlike(jobs, order, x, y, slope.estimate));
        if (Fit.of(jobs, order, x, y, alone).apart(Fit.of(jobs, order, x, y, alone.negate()))) {
            int[] others = IntStream.range(0, order.length)
                    .filter(alone.negate())
                    .map(i -> order[i])
                    .toArray();
            return of(jobs, others);
        }
        IntPredicate most = only(jobs, order, fastestChanging(jobs, order, x, y, slope.estimate));
        Fit others = Fit.of(jobs, order, x, y, most.negate());
        if (!slope.beyond(SURE) || !others.beyond(SURE)) {
            return slope.beyond(PERHAPS) && others.beyond(PERHAPS)
                    ? new ShopPace(false, slope.estimate, slope.error, asOf, NEVER)
                    : STEADY;
        }
        int place = ChangePoint.byLikelihood(y);
        double[] since = new double[order.length];
        Arrays.fill(since, Math.max(0, place), since.length, 1);
        withinRepairs(jobs, order, since);
        Fit step = place > 0 ? Fit.of(jobs, order, since, y) : slope;
        int n = order.length;
        double price = PARAMETERS_OF_A_STEP * StrictMath.log(n);
        boolean isStep = n * StrictMath.log(step.squares) + price < n * StrictMath.log(slope.squares);
        return isStep
                ? new ShopPace(
                        true, step.estimate, step.error, asOf, jobs.ledger().opened(order[place]))
                : new ShopPace(true, slope.estimate, slope.error, asOf, NEVER);
    }

    private static IntPredicate only(JobLines jobs, int[] rows, int type) {
        return i -> jobs.ledger().lines().repairType(rows[i]) == type;
    }

    /** Returns the repair that bears most of a slope. */
    private static int fastestChanging(JobLines jobs, int[] rows, double[] x, double[] y, double slope) {
        double[] borne = byType(jobs, rows, i -> x[i] * y[i] * StrictMath.signum(slope));
        return largest(borne);
    }

    /** Returns the repair whose own slope is farthest from the shop's, in errors of it. */
    private static int mostUnlike(JobLines jobs, int[] rows, double[] x, double[] y, double slope) {
        double[] left = byType(jobs, rows, i -> x[i] * (y[i] - slope * x[i]));
        double[] squares = byType(jobs, rows, i -> x[i] * x[i]);
        Arrays.setAll(left, type -> squares[type] > 0 ? left[type] * left[type] / squares[type] : 0);
        return largest(left);
    }

    private static double[] byType(JobLines jobs, int[] rows, IntToDoubleFunction of) {
        double[] sums = new double[jobs.ledger().repairTypes().size()];
        for (int i = 0; i < rows.length; i++) {
            sums[jobs.ledger().lines().repairType(rows[i])] += of.applyAsDouble(i);
        }
        return sums;
    }

    private static int largest(double[] values) {
        return IntStream.range(0, values.length).reduce(0, (a, b) -> values[b] > values[a] ? b : a);
    }

    /** Takes each repair's own mean off. */
    private static void withinRepairs(JobLines jobs, int[] rows, double[] values) {
        double[] sum = byType(jobs, rows, i -> values[i]);
        double[] count = byType(jobs, rows, i -> 1);
        for (int i = 0; i < rows.length; i++) {
            int type = jobs.ledger().lines().repairType(rows[i]);
            values[i] -= sum[type] / count[type];
        }
    }

    /** Least squares of one column without an intercept, its error clustered by ticket, and what is left. */
    private record Fit(double estimate, double error, double squares) {
        private boolean beyond(double errors) {
            return StrictMath.abs(estimate) > errors * error;
        }

        private boolean apart(Fit other) {
            return new Fit(estimate - other.estimate, StrictMath.hypot(error, other.error), 0).beyond(ALONE);
        }

        private static Fit of(JobLines jobs, int[] rows, double[] x, double[] y, IntPredicate some) {
            int[] kept = IntStream.range(0, rows.length).filter(some).toArray();
            return of(
                    jobs,
                    IntStream.of(kept).map(i -> rows[i]).toArray(),
                    IntStream.of(kept).mapToDouble(i -> x[i]).toArray(),
                    IntStream.of(kept).mapToDouble(i -> y[i]).toArray());
        }

        private static Fit of(JobLines jobs, int[] rows, double[] x, double[] y) {
            double xx = 0;
            double xy = 0;
            for (int i = 0; i < x.length; i++) {
                xx += x[i] * x[i];
                xy += x[i] * y[i];
            }
            double estimate = xx > 0 ? xy / xx : 0;
            Map<Integer, Double> scores = new HashMap<>();
            double squares = 0;
            for (int i = 0; i < x.length; i++) {
                double left = y[i] - estimate * x[i];
                squares += left * left;
                scores.merge(jobs.ledger().lines().ticket(rows[i]), x[i] * left, Double::sum);
            }
            double meat = 0;
            for (int ticket : scores.keySet().stream().sorted().toList()) {
                meat += scores.get(ticket) * scores.get(ticket);
            }
            double clusters = scores.size();
            double error = xx > 0 ? StrictMath.sqrt(meat * clusters / (clusters - 1)) / xx : Double.POSITIVE_INFINITY;
            return new Fit(estimate, error, squares);
        }
    }

    /** Returns whether the shop's pace changes beyond chance. */
    public boolean sure() {
        return sure;
    }

    /** Returns whether it changed at once rather than little by little. */
    public boolean step() {
        return stepDay != NEVER;
    }

    /** Returns the first day of the new pace, where it changed at once. */
    public int stepDay() {
        return stepDay;
    }

    /** Returns how much longer jobs take than a year ago, or than before the step, as a ratio: 1.08 is 8 % longer. */
    public double ratio() {
        return StrictMath.exp(change);
    }

    /** Returns an end of the 95 % range of {@link #ratio}, so many errors away. */
    public double ratio(double errors) {
        return StrictMath.exp(change + errors * error);
    }

    /** Returns the factor that brings hours of a job opened on a day to today's pace. */
    public double toToday(int opened) {
        return StrictMath.exp(change * reach(opened));
    }

    private double reach(int opened) {
        return step() ? (opened < stepDay ? 1 : 0) : (asOf - opened) / YEAR;
    }

    /** Returns by repair-type code the factor by which a pace that may be there, but is not sure, may have moved a load; else 1. */
    double[] perhaps(JobLines jobs) {
        double further = change + StrictMath.signum(change) * error;
        return new ShopPace(!sure && change != 0, further, error, asOf, stepDay)
                .corrections(jobs)
                .factor();
    }

    /**
     * Returns by repair-type code what brings a load to today's pace, and the variance of its logarithm that the pace's own error
     * adds.
     */
    public Corrections corrections(JobLines jobs) {
        int types = jobs.ledger().repairTypes().size();
        double[] hours = new double[types];
        double[] paced = new double[types];
        double[] reach = new double[types];
        for (int line = 0; sure() && line < jobs.size(); line++) {
            if (jobs.judged(line)) {
                int type = jobs.ledger().lines().repairType(line);
                double seconds = jobs.actualSeconds(line) + jobs.reworkSeconds(line);
                int opened = jobs.ledger().opened(line);
                hours[type] += seconds;
                paced[type] += seconds * toToday(opened);
                reach[type] += seconds * reach(opened);
            }
        }
        double[] factor = new double[types];
        double[] variance = new double[types];
        for (int type = 0; type < types; type++) {
            factor[type] = hours[type] > 0 ? paced[type] / hours[type] : 1;
            double mean = hours[type] > 0 ? reach[type] / hours[type] : 0;
            variance[type] = mean * mean * error * error;
        }
        return new Corrections(factor, variance);
    }

    /** By repair-type code. */
    public record Corrections(double[] factor, double[] logVariance) {
        /** Returns these with further factors. */
        Corrections times(double[] others) {
            double[] product = factor.clone();
            Arrays.setAll(product, type -> factor[type] * others[type]);
            return new Corrections(product, logVariance);
        }
    }
}
