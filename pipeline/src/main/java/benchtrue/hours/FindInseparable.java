package benchtrue.hours;

import benchtrue.shop.Hours;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds pairs of repair types that unlabelled hours can't tell apart: the inverse of the information matrix says that what one
 * gains the other loses.
 *
 * <p>The information of a ticket's sum about the load factors is x x' / v, x the base hours by cell and v the variance of the
 * sum; of a known line, base squared over its variance. Bench hours scatter in proportion to their size.
 */
final class FindInseparable {
    /** The estimates of a pair move against each other at least so strongly ... */
    private static final double LEAST_CORRELATION = -0.9;
    /** ... and the factor of at least one of them is uncertain by more than this share of itself. */
    private static final double LEAST_DOUBT = 0.10;

    private static final double SPREAD = 0.4;
    private final SplitProblem problem;
    private final Cells cells;
    private final double[] factor;

    FindInseparable(SplitProblem problem, Cells cells, double[] factor) {
        this.problem = problem;
        this.cells = cells;
        this.factor = factor;
    }

    /**
     * Returns the pairs by code.
     *
     * @param facts of the lines
     * @param actualSeconds of the lines, as split
     */
    List<InseparablePair> find(LineFacts facts, long[] actualSeconds) {
        double[][] covariance = Symmetric.inverse(information());
        List<InseparablePair> pairs = new ArrayList<>();
        for (int first = 0; first < cells.types(); first++) {
            for (int second = first + 1; second < cells.types(); second++) {
                if (inseparable(covariance, first, second)) {
                    joint(facts, actualSeconds, first, second, pairs);
                }
            }
        }
        return pairs;
    }

    private boolean inseparable(double[][] covariance, int first, int second) {
        double a = Math.sqrt(covariance[first][first]);
        double b = Math.sqrt(covariance[second][second]);
        double doubt = Math.max(a / factor[first], b / factor[second]);
        return covariance[first][second] <= LEAST_CORRELATION * a * b && doubt > LEAST_DOUBT;
    }

    private double[][] information() {
        double[][] information = new double[cells.size()][cells.size()];
        for (int cell = 0; cell < cells.size(); cell++) {
            information[cell][cell] = 0.01 / (SPREAD * SPREAD * factor[cell] * factor[cell]);
        }
        for (int i = 0; i < problem.knownCell.length; i++) {
            int cell = problem.knownCell[i];
            information[cell][cell] += 1 / (SPREAD * SPREAD * factor[cell] * factor[cell]);
        }
        for (int i = 0; i < problem.openTicket.length; i++) {
            add(i, information);
        }
        return information;
    }

    private void add(int place, double[][] information) {
        double variance = 0;
        for (int slot = problem.start[place]; slot < problem.start[place + 1]; slot++) {
            double expected = factor[problem.slotCell[slot]] * problem.slotBase[slot];
            variance += SPREAD * SPREAD * expected * expected;
        }
        for (int a = problem.start[place]; a < problem.start[place + 1]; a++) {
            for (int b = problem.start[place]; b < problem.start[place + 1]; b++) {
                information[problem.slotCell[a]][problem.slotCell[b]] +=
                        problem.slotBase[a] * problem.slotBase[b] / variance;
            }
        }
    }

    /** Adds a pair with its joint factor over the closed lines of tickets where both stand. */
    private static void joint(
            LineFacts facts, long[] actualSeconds, int first, int second, List<InseparablePair> pairs) {
        double hours = 0;
        double base = 0;
        int lines = 0;
        for (int ticket = 0; ticket + 1 < facts.starts.length; ticket++) {
            if (!facts.ordinary(ticket, first) || !facts.ordinary(ticket, second)) {
                continue;
            }
            for (int line = facts.starts[ticket]; line < facts.starts[ticket + 1]; line++) {
                if (facts.ordinary[line] && (facts.cell[line] == first || facts.cell[line] == second)) {
                    hours += Hours.of(actualSeconds[line]);
                    base += facts.baseHours[line];
                    lines++;
                }
            }
        }
        if (lines > 0) {
            pairs.add(new InseparablePair(first, second, hours / base, lines));
        }
    }
}
