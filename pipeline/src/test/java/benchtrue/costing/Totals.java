package benchtrue.costing;

import benchtrue.shop.Absent;

/** All parts of a variance together, absent where not known. */
final class Totals {
    private Totals() {}

    static long of(CostVariance variance) {
        return Absent.has(variance.price()) ? variance.price() + variance.quantity() : Absent.AMOUNT;
    }

    static long of(OverheadVariance variance) {
        return Absent.has(variance.volume())
                ? variance.variableSpending()
                        + variance.variableEfficiency()
                        + variance.fixedSpending()
                        + variance.volume()
                : Absent.AMOUNT;
    }
}
