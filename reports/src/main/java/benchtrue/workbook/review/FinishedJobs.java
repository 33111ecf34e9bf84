package benchtrue.workbook.review;

import benchtrue.costing.BenchHour;
import benchtrue.costing.EarnedMonth;
import benchtrue.costing.ShopMoney;
import benchtrue.shop.Absent;
import benchtrue.workbook.sheet.Amounts;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;

/**
 * What the jobs finished in the months of the bench hour came to, as sums over the rows of those months.
 *
 * @param months the months, oldest first
 * @param firstRow row of the first month on the sheet, numbered from 1
 * @param variableOverhead overhead that followed their hours, in ten-thousandths
 */
record FinishedJobs(List<EarnedMonth> months, int firstRow, long variableOverhead) {
    static FinishedJobs of(ShopMoney shop, Map<Integer, Integer> rowOfMonth) {
        BenchHour hour = shop.benchHour();
        List<EarnedMonth> months = shop.earned().stream()
                .filter(month -> month.month() >= hour.from() && month.month() <= hour.to())
                .toList();
        int first = months.isEmpty() ? 0 : rowOfMonth.get(months.get(0).month());
        return new FinishedJobs(months, first, hour.variableOverhead());
    }

    /** Returns the formula that adds one column up. */
    String sum(char column) {
        return "SUM(" + column + firstRow + ":" + column + (firstRow + months.size() - 1) + ")";
    }

    double quotedHours() {
        return Amounts.hours(sum(EarnedMonth::quotedSeconds));
    }

    double hours() {
        return Amounts.hours(sum(EarnedMonth::actualSeconds));
    }

    double labour() {
        return Amounts.money(sum(EarnedMonth::labourRevenue));
    }

    double parts() {
        return Amounts.money(sum(EarnedMonth::partsRevenue));
    }

    /** Returns what grows with the hours sold besides labour revenue: parts revenue less parts, wages and overhead. */
    double followsHours() {
        long parts = sum(month -> Absent.has(month.partsCost()) ? month.partsRevenue() - month.partsCost() : 0);
        return Amounts.money(parts - sum(month -> Absent.firstOf(month.labourCost(), 0)) - variableOverhead);
    }

    private long sum(ToLongFunction<EarnedMonth> figure) {
        return months.stream().mapToLong(figure).reduce(0, Math::addExact);
    }
}
