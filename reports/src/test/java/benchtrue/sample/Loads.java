package benchtrue.sample;

/** What the true hours per quoted hour of the invented shop's repair types are. */
public enum Loads {
    /** Some under-quoted by a tenth to a half, many near 1, a few over-quoted. */
    SPREAD(Double.NaN),
    /** Every repair type exactly 1 under the shop's own mix. */
    EXACTLY_ONE(1),
    /** Half of the repair types exactly 1.5 under the shop's own mix, the others exactly 1. */
    HALF_AT_ONE_AND_A_HALF(1.5),
    /** Half of the repair types exactly 1.25 under the shop's own mix, the others exactly 1. */
    HALF_AT_ONE_AND_A_QUARTER(1.25),
    /** Half of the repair types exactly 1.15 under the shop's own mix, the others exactly 1. */
    HALF_AT_ONE_AND_FIFTEEN_HUNDREDTHS(1.15);

    private final double everyOther;

    Loads(double everyOther) {
        this.everyOther = everyOther;
    }

    /** Returns the load of every other repair type; NaN where each has its own. */
    double everyOther() {
        return everyOther;
    }
}
