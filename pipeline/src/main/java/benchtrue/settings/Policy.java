package benchtrue.settings;

/**
 * How hours are proposed (methods, section 8).
 *
 * @param rule which figure of the predictive distribution is taken
 * @param coverage share of jobs that should fit the quote
 * @param largestStep largest change of a repair type's hours in one revision, as a share
 * @param priceRounding prices are rounded to a multiple of this, in ten-thousandths
 * @param fallBack what happens where a simpler method did better on past jobs
 */
public record Policy(Rule rule, double coverage, double largestStep, long priceRounding, FallBack fallBack) {
    /** The policy of a shop that set none. */
    public static final Policy DEFAULTS = new Policy(Rule.LARGER, 0.60, 0.25, 10_000, FallBack.WHEN_BEATEN);

    /** Takes everything but falling back, which is the default. */
    public Policy(Rule rule, double coverage, double largestStep, long priceRounding) {
        this(rule, coverage, largestStep, priceRounding, FallBack.WHEN_BEATEN);
    }

    /** Whether the proposal gives way to a simpler method that did better on past jobs. */
    public enum FallBack {
        /** It does. */
        WHEN_BEATEN,
        /** It stands; the review says what did better. */
        NEVER
    }

    /** Which figure is proposed. */
    public enum Rule {
        /** The larger of mean and quantile. */
        LARGER,
        /** The mean alone. */
        BREAK_EVEN,
        /** The quantile alone. */
        COVERAGE
    }
}
