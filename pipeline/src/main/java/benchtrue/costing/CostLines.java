package benchtrue.costing;

import benchtrue.costing.CostedLines.LineMoney;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.RepairType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinTask;

/** Puts revenue, wages, parts and overhead on every quoted line (methods, section 7, the line part). */
public final class CostLines {
    /**
     * Returns every line with its money. Without wages, overheads or parts the costs that need them are absent, and so is
     * the margin.
     */
    public CostedLines cost(JobLines jobs, Settings settings) {
        Ledger ledger = jobs.ledger();
        Revenue revenue = Revenue.of(jobs);
        List<Balance> balances = new ArrayList<>(revenue.balances());
        Wages wages = new Wages(ledger, settings.burden());
        OverheadRates rates = new OverheadRates(ledger, settings.money().overheadRate());
        ForkJoinTask<Optional<HourCosts>> carrying =
                ForkJoinTask.adapt(() -> overhead(jobs, rates)).fork();
        Optional<HourCosts> labour = labour(jobs, wages);
        PartShares parts = PartShares.of(jobs, revenue.parts());
        LineMoney money = new LineMoney(
                revenue.labour(),
                revenue.parts(),
                ofLines(jobs, labour, "wages and payroll on-costs", balances),
                parts(jobs, parts, balances),
                ofLines(jobs, carrying.join(), "overhead carried by jobs", balances));
        CostedLines lines = new CostedLines(jobs, money, shopRate(ledger, settings), balances);
        ShopMoney shop = new SumShop(lines, settings).sum(wages, rates, parts);
        if (!ledger.overheads().isEmpty()) {
            balances.add(OverheadMonth.balance(ledger, shop.work()));
        }
        return new CostedLines(jobs, money, lines.shopRate(), balances, shop);
    }

    private static Optional<HourCosts> labour(JobLines jobs, Wages wages) {
        return jobs.ledger().wages().isEmpty() ? Optional.empty() : Optional.of(FollowHours.follow(jobs, wages));
    }

    private static Optional<HourCosts> overhead(JobLines jobs, OverheadRates rates) {
        return jobs.ledger().overheads().isEmpty() ? Optional.empty() : Optional.of(FollowHours.follow(jobs, rates));
    }

    private static long[] ofLines(JobLines jobs, Optional<HourCosts> costs, String what, List<Balance> balances) {
        costs.ifPresent(known -> balances.add(known.balance(what)));
        return costs.map(HourCosts::ofLines).orElseGet(() -> unknown(jobs));
    }

    private static long[] parts(JobLines jobs, PartShares parts, List<Balance> balances) {
        if (jobs.ledger().missing().contains("parts-usage")) {
            return unknown(jobs);
        }
        balances.add(parts.balance());
        return parts.ofLines(jobs.size());
    }

    private static long[] unknown(JobLines jobs) {
        long[] column = new long[jobs.size()];
        Arrays.fill(column, Absent.AMOUNT);
        return column;
    }

    private static long shopRate(Ledger ledger, Settings settings) {
        if (Absent.has(settings.shopRate())) {
            return settings.shopRate();
        }
        long labour = 0;
        long seconds = 0;
        for (RepairType type : ledger.books().inForce(ledger.asOf()).types().values()) {
            labour = Math.addExact(labour, type.bookLabour());
            seconds += type.bookSeconds();
        }
        return Rate.hourly(labour, seconds);
    }
}
