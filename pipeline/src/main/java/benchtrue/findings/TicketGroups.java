package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.shop.QuotedLines;
import java.util.ArrayList;
import java.util.List;

/** Tickets dealt into groups, each left out in turn, and which repair types each group holds. */
final class TicketGroups {
    private final int groups;
    private final double[] weights;
    private final boolean[][] holds;

    /**
     * Deals the tickets into at most {@code most} groups; up to there a group is one ticket.
     *
     * @param weights how often each ticket counts; those below a half hold nothing
     */
    TicketGroups(JobLines jobs, int most, double[] weights) {
        int tickets = jobs.ledger().tickets().size();
        this.weights = weights.clone();
        groups = StrictMath.min(most, tickets);
        holds = new boolean[groups][jobs.ledger().repairTypes().size()];
        QuotedLines lines = jobs.ledger().lines();
        for (int line = 0; line < jobs.size(); line++) {
            if (jobs.judged(line) && weights[lines.ticket(line)] >= 0.5) {
                holds[group(lines.ticket(line))][lines.repairType(line)] = true;
            }
        }
    }

    int size() {
        return groups;
    }

    int group(int ticket) {
        return ticket % groups;
    }

    /** Returns the weights of the tickets with one group left out. */
    double[] without(int group) {
        double[] left = weights.clone();
        for (int ticket = group; ticket < left.length; ticket += groups) {
            left[ticket] = 0;
        }
        return left;
    }

    /**
     * Returns the values of the groups that hold a repair type.
     *
     * @param values by group, then repair type
     */
    double[] holding(int type, double[][] values) {
        List<Double> held = new ArrayList<>();
        for (int group = 0; group < groups; group++) {
            if (holds[group][type]) {
                held.add(values[group][type]);
            }
        }
        return held.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * Returns the variance of ln(value) that groups without a repair type bring to it, through hours split between it and
     * the types that they do hold.
     */
    double beside(int type, double value, double[][] values) {
        double variance = 0;
        for (int group = 0; group < groups; group++) {
            double moved = StrictMath.log(values[group][type] / value);
            variance += holds[group][type] || Double.isNaN(moved) ? 0 : moved * moved;
        }
        return variance;
    }
}
