package benchtrue.costing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Cost, volume and profit (OpenStax, Principles of Accounting 2, sections 3.1 to 3.5 and 9.4). */
final class BreakEven {
    private BreakEven() {}

    /** Returns how many units cover fixed costs and a profit; infinite where a unit contributes nothing. */
    static double units(long fixed, long profit, long contribution) {
        return contribution > 0 ? (fixed + (double) profit) / contribution : Double.POSITIVE_INFINITY;
    }

    /** Returns the share by which sales may fall before they only break even; negative where they do not reach it. */
    static double marginOfSafety(double sales, double breakEven) {
        return (sales - breakEven) / sales;
    }

    /**
     * Returns the revenue of which a share is left after the costs: cost / (1 - share), not cost x (1 + share), which is a
     * markup.
     */
    static long revenueForMargin(long cost, double share) {
        return BigDecimal.valueOf(cost)
                .divide(BigDecimal.ONE.subtract(BigDecimal.valueOf(share)), 0, RoundingMode.HALF_EVEN)
                .longValueExact();
    }
}
