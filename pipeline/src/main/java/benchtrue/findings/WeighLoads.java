package benchtrue.findings;

import benchtrue.hours.SplitModel;
import benchtrue.settings.Settings;
import benchtrue.statistics.Bootstrap;
import benchtrue.statistics.GroupWeights;
import benchtrue.statistics.Interval;
import benchtrue.statistics.Jackknife;
import benchtrue.statistics.Resampling;
import benchtrue.statistics.Seed;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Weighs how surely each load factor is known (methods, section 5). Tickets are the unit that is left out and drawn again,
 * since the lines of a ticket share technician, instrument and clock; the split of unlabelled hours is redone each time.
 *
 * <p>Interval and p for under-quoting: Student t on ln R with the delete-a-group jackknife (Tukey 1958; Efron 1982), degrees
 * of freedom = groups with the type - 1. p for over-quoting: the largest of that, the percentile and the BCa bootstrap
 * (Efron 1987), since hours are skewed to the right and each alone is too eager there.
 */
final class WeighLoads {
    /** Most groups that tickets are dealt into; up to here a group is one ticket. */
    private static final int MOST_GROUPS = 1_200;

    private static final double LEVEL = 0.90;

    private final SplitModel model;
    private final Settings settings;

    WeighLoads(SplitModel model, Settings settings) {
        this.model = model;
        this.settings = settings;
    }

    /**
     * Returns the evidence on each repair type by code.
     *
     * @param ticketTypes for each ticket the repair types of its judged lines
     * @param enough by repair type, whether it has jobs enough to be judged
     */
    LoadEvidence[] weigh(int[][] ticketTypes, boolean[] enough) {
        double[] weights = new double[model.tickets()];
        Arrays.fill(weights, 1);
        double[] loads = model.loads(weights);
        double[][] without = leaveOut();
        boolean[][] holds = holds(ticketTypes, without.length, loads.length);
        double[][] replicates = resampling().replicates(model::loads);
        LoadEvidence[] evidence = new LoadEvidence[loads.length];
        for (int type = 0; type < loads.length; type++) {
            evidence[type] = enough[type] && loads[type] > 0
                    ? evidence(loads[type], values(without, holds, type), replicates[type])
                    : LoadEvidence.NONE;
        }
        return evidence;
    }

    private Resampling resampling() {
        long seed = Seed.of(settings.seed(), "load-factor", "");
        return new Resampling(GroupWeights.POISSON, seed, settings.resamples(), model.tickets());
    }

    /** Loads by group left out, then repair type. */
    private double[][] leaveOut() {
        int groups = StrictMath.min(MOST_GROUPS, model.tickets());
        return IntStream.range(0, groups)
                .parallel()
                .mapToObj(group -> {
                    double[] weights = new double[model.tickets()];
                    for (int ticket = 0; ticket < weights.length; ticket++) {
                        weights[ticket] = ticket % groups == group ? 0 : 1;
                    }
                    return model.loads(weights);
                })
                .toArray(double[][]::new);
    }

    private static boolean[][] holds(int[][] ticketTypes, int groups, int types) {
        boolean[][] holds = new boolean[groups][types];
        for (int ticket = 0; ticket < ticketTypes.length; ticket++) {
            for (int type : ticketTypes[ticket]) {
                holds[ticket % groups][type] = true;
            }
        }
        return holds;
    }

    private static double[] values(double[][] without, boolean[][] holds, int type) {
        List<Double> values = new ArrayList<>();
        for (int group = 0; group < without.length; group++) {
            if (holds[group][type]) {
                values.add(without[group][type]);
            }
        }
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private LoadEvidence evidence(double load, double[] without, double[] replicates) {
        Jackknife jackknife = Jackknife.ofLog(load, without);
        if (!(jackknife.standardError() > 0)) {
            return LoadEvidence.NONE;
        }
        Bootstrap bootstrap = Bootstrap.of(load, replicates, jackknife.acceleration());
        Interval onLog = jackknife.interval(LEVEL);
        double floor = 1 - settings.tolerance();
        double overP = StrictMath.max(
                jackknife.chanceAtLeast(StrictMath.log(floor)),
                StrictMath.max(bootstrap.percentileChanceAtLeast(floor), bootstrap.bcaChanceAtLeast(floor)));
        return new LoadEvidence(
                new Interval(StrictMath.exp(onLog.low()), StrictMath.exp(onLog.high())),
                1 - jackknife.chanceAtMost(0),
                jackknife.chanceAtMost(StrictMath.log(1 + settings.tolerance())),
                overP);
    }
}
