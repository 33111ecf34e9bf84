package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import benchtrue.shop.Months;
import benchtrue.shop.QuotedLines;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;

/** Sums the money of jobs by whatever they have in common. */
final class SumGroups {
    private final CostedLines costs;
    private final JobLines jobs;
    private final MarginBasis basis;
    private final OverheadRates rates;
    private final Earned earned;
    private final Standards standards;

    SumGroups(CostedLines costs, MarginBasis basis, OverheadRates rates, Earned earned) {
        this.costs = costs;
        this.basis = basis;
        this.rates = rates;
        this.earned = earned;
        jobs = costs.jobs();
        standards = new Standards(jobs);
    }

    /** Returns the groups of some lines, largest contribution a bench hour first, those without hours last. */
    List<GroupMoney> by(IntFunction<String> nameOfLine, IntPredicate counted) {
        TreeMap<String, Sum> sums = new TreeMap<>();
        for (int line = 0; line < jobs.size(); line++) {
            if (counted.test(line)) {
                sums.computeIfAbsent(nameOfLine.apply(line), Sum::new).add(line);
            }
        }
        List<GroupMoney> groups = new ArrayList<>();
        sums.values().forEach(sum -> groups.add(sum.group()));
        groups.sort(Comparator.comparingLong(GroupMoney::contributionPerHour)
                .reversed()
                .thenComparing(GroupMoney::name));
        return groups;
    }

    private final class Sum {
        private final String name;
        private int lines;
        private int leftOut;
        private long quotedSeconds;
        private long actualSeconds;
        private long labourRevenue;
        private long partsRevenue;
        private long labourCost;
        private long partsCost;
        private long overheadCost;
        private long variableOverhead;
        private long discounts;
        private long extras;

        Sum(String name) {
            this.name = name;
        }

        void add(int line) {
            if (!basis.knownOf(costs, line)) {
                leftOut++;
                return;
            }
            lines++;
            quotedSeconds += standards.quoted(line);
            actualSeconds += jobs.actualSeconds(line);
            labourRevenue += costs.labourRevenue(line);
            partsRevenue += Absent.firstOf(costs.partsRevenue(line), 0);
            labourCost += Absent.firstOf(costs.labourCost(line), 0);
            partsCost += Absent.firstOf(costs.partsCost(line), 0);
            overheadCost += Absent.firstOf(costs.overheadCost(line), 0);
            variableOverhead += variableOverhead(line);
            addDiscount(line);
        }

        private long variableOverhead(int line) {
            int day = Absent.firstOf(earned.day(line), jobs.ledger().asOf());
            int year = Months.year(Months.of(day));
            return rates.has(year) ? Money.perHour(rates.ofYear(year).variableRate(), jobs.actualSeconds(line)) : 0;
        }

        private void addDiscount(int line) {
            QuotedLines quotes = jobs.ledger().lines();
            long billed = quotes.billedLabour(line);
            long quoted = Absent.firstOf(quotes.firstQuotedLabour(line), quotes.quotedLabour(line));
            if (Absent.has(billed) && Absent.has(quoted)) {
                discounts += Math.max(0, quoted - billed);
                extras += Math.max(0, billed - quoted);
            }
        }

        GroupMoney group() {
            return new GroupMoney(
                    name,
                    lines,
                    leftOut,
                    quotedSeconds,
                    actualSeconds,
                    labourRevenue,
                    partsRevenue,
                    basis.wages() ? labourCost : Absent.AMOUNT,
                    basis.parts() ? partsCost : Absent.AMOUNT,
                    basis.overheads() ? overheadCost : Absent.AMOUNT,
                    basis.overheads() ? variableOverhead : Absent.AMOUNT,
                    discounts,
                    extras);
        }
    }
}
