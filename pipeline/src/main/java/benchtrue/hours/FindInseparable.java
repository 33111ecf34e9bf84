package benchtrue.hours;

import benchtrue.hours.Parameters.Block;
import benchtrue.shop.Hours;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds pairs of repair types that unlabelled hours can't tell apart: the inverse of the types' information says that what one
 * gains the other loses. Repair types are not let lean on each other here, so that leaning does not pass for knowledge; what
 * scales whole tickets is held, since it moves all types alike and would hide a pair.
 */
final class FindInseparable {
    /** The factors of a pair move against each other at least so strongly ... */
    private static final double LEAST_CORRELATION = -0.8;
    /** ... and one of them is uncertain by more than this, on the log scale. */
    private static final double LEAST_DOUBT = 0.10;
    /** A hundredth of a job, so that a type without any can be inverted. */
    private static final double HARDLY = 0.1;

    private final SplitData data;
    private final EffectFit fit;

    FindInseparable(SplitData data, EffectFit fit) {
        this.data = data;
        this.fit = fit;
    }

    /** Returns the pairs by code, given the lines' seconds as split. */
    List<InseparablePair> find(long[] actualSeconds) {
        double[][] covariance = Symmetric.inverse(information());
        List<InseparablePair> pairs = new ArrayList<>();
        for (int first = 0; first < covariance.length; first++) {
            for (int second = first + 1; second < covariance.length; second++) {
                if (inseparable(covariance, first, second)) {
                    joint(data.facts, data.judged, actualSeconds, first, second, pairs);
                }
            }
        }
        return pairs;
    }

    private double[][] information() {
        int from = fit.layout().of(Block.TYPE, 0);
        double[][] information = new double[data.cells.types()][];
        for (int type = 0; type < information.length; type++) {
            information[type] = Arrays.copyOfRange(fit.ofTickets()[from + type], from, from + information.length);
            information[type][type] += HARDLY;
        }
        return information;
    }

    private static boolean inseparable(double[][] covariance, int first, int second) {
        double a = covariance[first][first];
        double b = covariance[second][second];
        return StrictMath.sqrt(Math.max(a, b)) > LEAST_DOUBT
                && covariance[first][second] <= LEAST_CORRELATION * StrictMath.sqrt(a * b);
    }

    /** Adds a pair with its joint factor over the closed lines of tickets where both stand. */
    private static void joint(
            LineFacts facts,
            boolean[] judged,
            long[] actualSeconds,
            int first,
            int second,
            List<InseparablePair> pairs) {
        double hours = 0;
        double base = 0;
        int lines = 0;
        for (int ticket = 0; ticket + 1 < facts.starts.length; ticket++) {
            if (!facts.ordinary(ticket, first) || !facts.ordinary(ticket, second)) {
                continue;
            }
            for (int line = facts.starts[ticket]; line < facts.starts[ticket + 1]; line++) {
                if (judged[line] && (facts.cell[line] == first || facts.cell[line] == second)) {
                    hours += Hours.of(actualSeconds[line]);
                    base += facts.todayHours[line];
                    lines++;
                }
            }
        }
        if (lines > 0) {
            pairs.add(new InseparablePair(first, second, hours / base, lines));
        }
    }
}
