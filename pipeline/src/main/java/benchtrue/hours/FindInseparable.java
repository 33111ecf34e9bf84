package benchtrue.hours;

import benchtrue.hours.Parameters.Block;
import benchtrue.shop.Hours;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds pairs of repair types that unlabelled hours can't tell apart: the inverse of the information matrix says that what one
 * gains the other loses. Repair types are not let lean on each other here, so that leaning does not pass for knowledge.
 */
final class FindInseparable {
    /** The factors of a pair move against each other at least so strongly ... */
    private static final double LEAST_CORRELATION = -0.8;
    /** ... and at least one of them is uncertain by more than this, on the log scale. */
    private static final double LEAST_DOUBT = 0.10;

    private static final double LEFT_OUT = 1e12;
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
        for (int first = 0; first < data.cells.types(); first++) {
            for (int second = first + 1; second < data.cells.types(); second++) {
                if (inseparable(covariance, first, second)) {
                    joint(data.facts, data.judged, actualSeconds, first, second, pairs);
                }
            }
        }
        return pairs;
    }

    private double[][] information() {
        Parameters layout = fit.layout();
        double[][] information = new double[layout.size][];
        for (int i = 0; i < layout.size; i++) {
            boolean type = i >= layout.of(Block.TYPE, 0) && i < layout.of(Block.TYPE, data.cells.size());
            boolean common = i == layout.shop || i < layout.of(Block.TYPE, 0);
            information[i] = fit.ofTickets()[i].clone();
            information[i][i] += type ? HARDLY : common ? LEFT_OUT : layout.precision[i];
        }
        return information;
    }

    private boolean inseparable(double[][] covariance, int first, int second) {
        int a = fit.layout().of(Block.TYPE, first);
        int b = fit.layout().of(Block.TYPE, second);
        double doubt = StrictMath.sqrt(Math.max(covariance[a][a], covariance[b][b]));
        double both = StrictMath.sqrt(covariance[a][a] * covariance[b][b]);
        return doubt > LEAST_DOUBT && covariance[a][b] <= LEAST_CORRELATION * both;
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
