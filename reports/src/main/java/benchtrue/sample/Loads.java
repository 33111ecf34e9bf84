package benchtrue.sample;

/** What the true hours per quoted hour of the invented shop's repair types are. */
public enum Loads {
    /** Some under-quoted by a tenth to a half, many near 1, a few over-quoted. */
    SPREAD,
    /** Every repair type exactly 1 under the shop's own mix. */
    EXACTLY_ONE,
    /** Half of the repair types exactly 1.25 under the shop's own mix, the others exactly 1. */
    HALF_AT_ONE_AND_A_QUARTER
}
