package benchtrue.costing;

import benchtrue.shop.Absent;

/**
 * Why a cost differs from its standard: actual less standard, negative where favourable (OpenStax, Principles of Accounting
 * 2, sections 8.2 and 8.3). The two parts add up to actual cost less the cost allowed exactly.
 *
 * @param price actual cost less actual quantity at the standard price; of labour, the rate variance
 * @param quantity actual less allowed quantity, at the standard price; of labour, the efficiency variance
 */
public record CostVariance(long price, long quantity) {
    /** A variance that can't be known. */
    static final CostVariance UNKNOWN = new CostVariance(Absent.AMOUNT, Absent.AMOUNT);

    /**
     * Returns the variances of a cost.
     *
     * @param actual what was spent
     * @param actualAtStandard the actual quantity at the standard price
     * @param allowed the quantity that the standard allows for what was done, at the standard price
     */
    static CostVariance of(long actual, long actualAtStandard, long allowed) {
        return new CostVariance(actual - actualAtStandard, actualAtStandard - allowed);
    }
}
