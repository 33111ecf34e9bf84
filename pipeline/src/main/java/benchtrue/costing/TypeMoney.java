package benchtrue.costing;

import java.util.Arrays;

/**
 * What the jobs of a month came to, one value a repair-type code. Money in ten-thousandths.
 *
 * @param lines jobs
 * @param standardSeconds hours that today's book allows for them
 * @param actualSeconds hours they took
 * @param labourCost wages and payroll on-costs
 * @param partsMargin parts revenue less parts cost
 * @param overheadCost overhead carried
 */
record TypeMoney(
        long[] lines,
        long[] standardSeconds,
        long[] actualSeconds,
        long[] labourRevenue,
        long[] labourCost,
        long[] partsMargin,
        long[] overheadCost) {
    static TypeMoney none(int types) {
        return new TypeMoney(
                new long[types],
                new long[types],
                new long[types],
                new long[types],
                new long[types],
                new long[types],
                new long[types]);
    }

    int types() {
        return lines.length;
    }

    long margin(int type) {
        return labourRevenue[type] - labourCost[type] + partsMargin[type] - overheadCost[type];
    }

    long margin() {
        long margin = 0;
        for (int type = 0; type < lines.length; type++) {
            margin = Math.addExact(margin, margin(type));
        }
        return margin;
    }

    static long sum(long[] column) {
        return Arrays.stream(column).reduce(0, Math::addExact);
    }
}
