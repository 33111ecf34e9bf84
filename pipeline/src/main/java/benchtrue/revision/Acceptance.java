package benchtrue.revision;

import benchtrue.statistics.Coverage;
import benchtrue.statistics.Interval;

/**
 * What customers said to quotes, void tickets left out.
 *
 * @param quotes lines quoted
 * @param accepted lines accepted
 * @param lower lower end of the exact 90 % interval of the share accepted (Clopper, Pearson 1934); NaN without quotes
 * @param upper upper end
 */
public record Acceptance(int quotes, int accepted, double lower, double upper) {
    /** Fewer quotes than this bear no comparison of shares. */
    private static final int ENOUGH = 30;

    private static final double LEVEL = 0.90;

    static Acceptance of(int quotes, int accepted) {
        Interval interval = Coverage.of(accepted, quotes, LEVEL).interval();
        return new Acceptance(quotes, accepted, interval.low(), interval.high());
    }

    /** Returns the share accepted; NaN without quotes. */
    public double share() {
        return quotes == 0 ? Double.NaN : accepted / (double) quotes;
    }

    /** Returns whether there are too few quotes to compare. */
    public boolean smallNumbers() {
        return quotes < ENOUGH;
    }

    /** Returns whether the intervals of two spans have nothing in common. */
    boolean apartFrom(Acceptance other) {
        return upper < other.lower || other.upper < lower;
    }
}
