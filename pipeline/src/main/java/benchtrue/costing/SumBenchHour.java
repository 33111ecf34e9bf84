package benchtrue.costing;

import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.Months;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * Works out what a bench hour costs and earns. The result is that of full absorption: the margin of finished jobs, less
 * what stands on no job and the overhead they did not carry. A month whose overheads are not recorded yet is taken to have
 * cost what its hours carried.
 */
final class SumBenchHour {
    private static final int[] PRICE_STEPS = {-10, -5, 0, 5, 10, 15, 20};
    private static final int[] HOUR_STEPS = {-10, 0, 10};
    private final List<WorkMonth> work;
    private final List<EarnedMonth> earned;
    private final Settings settings;
    private final long shopRate;
    private final OverheadRates overheads;
    private final int from;
    private final int to;

    SumBenchHour(
            List<WorkMonth> work,
            List<EarnedMonth> earned,
            OverheadRates overheads,
            Settings settings,
            long shopRate,
            int lastWholeMonth) {
        int first = work.isEmpty() ? lastWholeMonth : work.get(0).month();
        to = lastWholeMonth;
        from = Math.min(to, Math.max(first, to - 11));
        this.work = work.stream()
                .filter(month -> month.month() >= from && month.month() <= to)
                .toList();
        this.earned = earned.stream()
                .filter(month -> month.month() >= from && month.month() <= to)
                .toList();
        this.overheads = overheads;
        this.settings = settings;
        this.shopRate = shopRate;
    }

    BenchHour sum() {
        Jobs jobs = jobs();
        long result = result();
        long fixed = Absent.has(result) ? jobs.contribution() - result : Absent.AMOUNT;
        double hours = Hours.of(jobs.actualSeconds);
        double breakEven = Absent.has(fixed)
                ? BreakEven.units(fixed, 0, Rate.hourly(jobs.contribution(), Math.max(1, jobs.actualSeconds)))
                : Double.NaN;
        return new BenchHour(
                from,
                to,
                soldSeconds(),
                cost(),
                rates(jobs, result),
                result,
                breakEven,
                hours > 0 ? BreakEven.marginOfSafety(hours, breakEven) : Double.NaN,
                jobs.variableOverhead,
                sensitivity(jobs, result));
    }

    /** Finished jobs of all the months. */
    private record Jobs(
            long quotedSeconds,
            long actualSeconds,
            long labourRevenue,
            long partsRevenue,
            long partsMargin,
            long labourCost,
            long variableOverhead) {
        long contribution() {
            return labourRevenue + partsMargin - labourCost - variableOverhead;
        }
    }

    private Jobs jobs() {
        long variable = 0;
        for (EarnedMonth month : earned) {
            int year = Months.year(month.month());
            if (overheads.has(year)) {
                variable += Money.perHour(overheads.ofYear(year).variableRate(), month.actualSeconds());
            }
        }
        return new Jobs(
                sum(EarnedMonth::quotedSeconds),
                sum(EarnedMonth::actualSeconds),
                sum(EarnedMonth::labourRevenue),
                sum(EarnedMonth::partsRevenue),
                sum(month -> Absent.has(month.partsCost()) ? month.partsRevenue() - month.partsCost() : 0),
                sum(month -> Absent.firstOf(month.labourCost(), 0)),
                variable);
    }

    private long sum(ToLongFunction<EarnedMonth> figure) {
        return earned.stream().mapToLong(figure).reduce(0, Math::addExact);
    }

    private long soldSeconds() {
        return work.stream()
                .mapToLong(month -> month.seconds(WorkKind.SOLD) + month.seconds(WorkKind.OWN_STOCK))
                .sum();
    }

    private HourCost cost() {
        long sold = soldSeconds();
        return new HourCost(
                perSold(WorkMonth::productiveWages, sold),
                perSold(month -> less(month.allWages(), month.productiveWages()), sold),
                perSold(WorkMonth::overtimePremium, sold),
                perSold(WorkMonth::paidNotLogged, sold),
                perSold(month -> month.overhead().actual(), sold),
                perSold(WorkMonth::supplies, sold));
    }

    private static long less(long all, long part) {
        return Absent.has(all) ? all - part : Absent.AMOUNT;
    }

    /** A cost over the hours sold in the months that have it recorded. */
    private long perSold(ToLongFunction<WorkMonth> cost, long sold) {
        long sum = 0;
        long seconds = 0;
        for (WorkMonth month : work) {
            if (Absent.has(cost.applyAsLong(month))) {
                sum = Math.addExact(sum, cost.applyAsLong(month));
                seconds += month.seconds(WorkKind.SOLD) + month.seconds(WorkKind.OWN_STOCK);
            }
        }
        return sold > 0 ? Rate.hourly(sum, seconds) : Absent.AMOUNT;
    }

    private long result() {
        long result = 0;
        for (EarnedMonth month : earned) {
            if (!Absent.has(month.margin()) || !Absent.has(month.overheadCost())) {
                return Absent.AMOUNT;
            }
            result = Math.addExact(result, month.margin());
        }
        for (WorkMonth month : work) {
            if (!Absent.has(month.unsoldWages())) {
                return Absent.AMOUNT;
            }
            result -= month.unsoldWages()
                    + month.overtimePremium()
                    + Absent.firstOf(month.paidNotLogged(), 0)
                    + Absent.firstOf(month.supplies(), 0)
                    + Absent.firstOf(month.overhead().underApplied(), 0);
        }
        return earned.isEmpty() ? Absent.AMOUNT : result;
    }

    private ShopRates rates(Jobs jobs, long result) {
        long hourly = Rate.hourly(jobs.contribution() + jobs.labourCost, jobs.actualSeconds);
        boolean priced = Absent.has(result);
        long costs = priced ? jobs.labourRevenue + jobs.partsRevenue - result : Absent.AMOUNT;
        long target = priced
                ? BreakEven.revenueForMargin(costs, settings.money().targetMargin()) - jobs.partsRevenue
                : Absent.AMOUNT;
        return new ShopRates(
                shopRate,
                Rate.hourly(jobs.labourRevenue, jobs.quotedSeconds),
                Rate.hourly(jobs.labourRevenue, jobs.actualSeconds),
                Rate.hourly(priced ? jobs.labourRevenue - result : Absent.AMOUNT, jobs.quotedSeconds),
                Rate.hourly(target, jobs.quotedSeconds),
                priced ? hourly : Absent.AMOUNT,
                priced ? lessExtraWage(hourly, jobs) : Absent.AMOUNT);
    }

    private long lessExtraWage(long hourly, Jobs jobs) {
        long wage = Rate.hourly(jobs.labourCost, jobs.actualSeconds);
        if (!Absent.has(hourly) || !Absent.has(wage)) {
            return Absent.AMOUNT;
        }
        long premium = (long) StrictMath.rint(wage * settings.money().overtimePremium());
        return hourly - wage - premium;
    }

    private static List<WhatIf> sensitivity(Jobs jobs, long result) {
        List<WhatIf> rows = new ArrayList<>();
        if (!Absent.has(result)) {
            return rows;
        }
        long fixed = jobs.contribution() - result;
        long otherThanLabour = jobs.contribution() - jobs.labourRevenue;
        for (int price : PRICE_STEPS) {
            for (int hours : HOUR_STEPS) {
                long labour = Rate.scaled(jobs.labourRevenue, (100L + price) * (100 + hours), 10_000);
                long other = Rate.scaled(otherThanLabour, 100L + hours, 100);
                rows.add(new WhatIf(price, hours, labour + other - fixed));
            }
        }
        return rows;
    }
}
