package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import java.util.List;
import java.util.Objects;

/**
 * Every quoted line with its money, in ten-thousandths; {@link Absent#AMOUNT} where the shop's files can't tell.
 *
 * @param jobs job lines the money belongs to
 * @param shopRate posted price of a bench hour, from the settings or today's book
 * @param balances wages, parts and overhead: what was read against the lines and other places where it went
 * @param shop the shop's money as a whole: months, kinds of jobs, the bench hour, work in the shop
 */
public record CostedLines(JobLines jobs, LineMoney money, long shopRate, List<Balance> balances, ShopMoney shop) {
    public CostedLines {
        balances = List.copyOf(balances);
    }

    CostedLines(JobLines jobs, LineMoney money, long shopRate, List<Balance> balances) {
        this(jobs, money, shopRate, balances, null);
    }

    /** Columns of {@link CostedLines}, one value a line; handed over, not shared. */
    record LineMoney(
            long[] labourRevenue, long[] partsRevenue, long[] labourCost, long[] partsCost, long[] overheadCost) {}

    @Override
    public ShopMoney shop() {
        return Objects.requireNonNull(shop, "lines not summed");
    }

    /** Returns labour billed, else quoted; 0 where declined, void or given away; absent where nobody recorded it. */
    public long labourRevenue(int line) {
        return money.labourRevenue[line];
    }

    /** Returns parts billed, else quoted, else charged by the part; absent where nobody recorded any. */
    public long partsRevenue(int line) {
        return money.partsRevenue[line];
    }

    /** Returns wages and payroll on-costs of the hours on the line; absent where a wage is missing. */
    public long labourCost(int line) {
        return money.labourCost[line];
    }

    /** Returns the cost of parts drawn for the line; absent without the table of parts. */
    public long partsCost(int line) {
        return money.partsCost[line];
    }

    /** Returns the overhead carried by the line; absent without overheads for the year of the work. */
    public long overheadCost(int line) {
        return money.overheadCost[line];
    }

    /**
     * Returns revenue less all costs; absent where a cost or the labour revenue is. A line that charges nothing for parts
     * earns nothing with them.
     */
    public long margin(int line) {
        boolean known = Absent.has(labourRevenue(line))
                && Absent.has(labourCost(line))
                && Absent.has(partsCost(line))
                && Absent.has(overheadCost(line));
        if (!known) {
            return Absent.AMOUNT;
        }
        long revenue = labourRevenue(line) + Absent.firstOf(partsRevenue(line), 0);
        return revenue - labourCost(line) - partsCost(line) - overheadCost(line);
    }

    /** Returns the labour, parts and overhead of the line that are known, together. */
    public long knownCost(int line) {
        return Absent.firstOf(labourCost(line), 0)
                + Absent.firstOf(partsCost(line), 0)
                + Absent.firstOf(overheadCost(line), 0);
    }

    /** Returns labour revenue over actual hours as money an hour; absent without either. */
    public long effectiveRate(int line) {
        return Rate.hourly(labourRevenue(line), jobs.actualSeconds(line));
    }
}
