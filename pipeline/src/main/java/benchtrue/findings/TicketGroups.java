package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.shop.QuotedLines;
import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Tickets dealt into groups, each left out in turn, and which repair types each group holds. Tickets that do not count
 * stand together in a last group that has no weight.
 */
final class TicketGroups {
    private final int groups;
    private final int[] groupOfTicket;
    private final boolean[][] holds;

    /**
     * Deals the tickets that count into at most {@code most} groups in turn; up to there a group is one ticket.
     *
     * @param counts which tickets count
     */
    TicketGroups(JobLines jobs, int most, IntPredicate counts) {
        groupOfTicket = new int[jobs.ledger().tickets().size()];
        int dealt = 0;
        for (int ticket = 0; ticket < groupOfTicket.length; ticket++) {
            groupOfTicket[ticket] = counts.test(ticket) ? dealt++ % most : most;
        }
        groups = StrictMath.min(most, dealt);
        for (int ticket = 0; ticket < groupOfTicket.length; ticket++) {
            groupOfTicket[ticket] = StrictMath.min(groupOfTicket[ticket], groups);
        }
        holds = new boolean[groups][jobs.ledger().repairTypes().size()];
        QuotedLines lines = jobs.ledger().lines();
        for (int line = 0; line < jobs.size(); line++) {
            int group = groupOfTicket[lines.ticket(line)];
            if (jobs.judged(line) && group < groups) {
                holds[group][lines.repairType(line)] = true;
            }
        }
    }

    /** Returns how many groups count. */
    int size() {
        return groups;
    }

    /** Returns how many groups there are with the one that does not count. */
    int all() {
        return groups + 1;
    }

    int[] ofTickets() {
        return groupOfTicket.clone();
    }

    double[] toTickets(double[] groupWeights) {
        double[] weights = new double[groupOfTicket.length];
        for (int ticket = 0; ticket < weights.length; ticket++) {
            weights[ticket] = groupWeights[groupOfTicket[ticket]];
        }
        return weights;
    }

    /** Returns the weights of the groups with those that count drawn so often. */
    double[] weights(double[] drawn) {
        return Arrays.copyOf(drawn, groups + 1);
    }

    /** Returns the weights of the groups with none left out. */
    double[] whole() {
        double[] weights = new double[groups + 1];
        Arrays.fill(weights, 0, groups, 1);
        return weights;
    }

    /** Returns the weights of the groups with one left out. */
    double[] without(int group) {
        double[] weights = whole();
        weights[group] = 0;
        return weights;
    }

    /**
     * Returns the values of the groups that hold a repair type.
     *
     * @param values by group, then repair type
     */
    double[] holding(int type, double[][] values) {
        return IntStream.range(0, groups)
                .filter(group -> holds[group][type])
                .mapToDouble(group -> values[group][type])
                .toArray();
    }
}
