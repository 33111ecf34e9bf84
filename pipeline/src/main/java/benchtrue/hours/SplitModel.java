package benchtrue.hours;

/** Splits unlabelled hours again under other ticket weights, so that intervals carry the split's own doubt. */
public interface SplitModel {
    /** Returns how many tickets there are; weights have this length. */
    int tickets();

    /**
     * Fits the split with each ticket counted as often as its weight says.
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
}
