package benchtrue.hours;

import java.util.Arrays;
import java.util.function.UnaryOperator;

/** Splits unlabelled hours again under other ticket weights, so that intervals carry the split's own doubt. */
public interface SplitModel {
    /** Returns how many tickets, or groups of tickets, there are; weights have this length. */
    int tickets();

    /**
     * Fits the split with each ticket counted as often as its weight says. Safe for parallel callers; the same weights give
     * the same bits on any number of threads.
     *
     * @param ticketWeights weight of each ticket by index, not negative; 1 for the plain fit
     * @return load factor of each repair type by code, rework included, over closed accepted judged lines against
     *     today's book; NaN where no weighted line has the type
     */
    double[] loads(double[] ticketWeights);

    /**
     * Returns, for each repair type by code, the variance of ln(load factor) that comes from what the split leans on and
     * that no resample shows, since a resample leans on the same; 0 where every hour names its line.
     */
    double[] leaningVariance();

    /**
     * Returns {@link #loads} as a function of weights of groups of tickets, every ticket of a group counted alike. In a large
     * shop the split then moves with the weights to first order, at a cost that does not grow with tickets times resamples.
     * Safe for parallel callers.
     *
     * @param groupOfTicket group of each ticket, from 0
     * @param groups how many groups
     */
    default UnaryOperator<double[]> byGroup(int[] groupOfTicket, int groups) {
        int[] groupOf = groupOfTicket.clone();
        return weights -> loads(
                Arrays.stream(groupOf).mapToDouble(group -> weights[group]).toArray());
    }

    /** Returns the same to first order whatever the size of the shop, for figures that bear it. */
    UnaryOperator<double[]> firstOrder(int[] groupOfTicket, int groups);
}
