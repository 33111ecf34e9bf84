package benchtrue.costing;

import benchtrue.format.Words;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import benchtrue.shop.Months;
import benchtrue.shop.QuotedLines;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;

/** Sums every line's money to the shop's: by month and by kind of job. */
final class SumShop {
    private static final int YEAR = 365;
    private static final int WORST = 20;
    private final CostedLines costs;
    private final Settings settings;
    private final JobLines jobs;
    private final Ledger ledger;
    private final Earned earned;
    private final MarginBasis basis;
    private final int since;

    SumShop(CostedLines costs, Settings settings) {
        this.costs = costs;
        this.settings = settings;
        jobs = costs.jobs();
        ledger = jobs.ledger();
        earned = new Earned(jobs);
        basis = MarginBasis.of(ledger);
        since = ledger.asOf() - YEAR + 1;
    }

    ShopMoney sum(Wages wages, OverheadRates rates, PartShares parts) {
        // Asks nothing of the months, and takes about as long.
        ForkJoinTask<Groups> grouping = ForkJoinTask.adapt(() -> groups(rates)).fork();
        ForkJoinTask<List<Gift>> giving = ForkJoinTask.adapt(() -> new GiveAway(costs, earned, since).find())
                .fork();
        PaidTime paid = new PaidTime(ledger, wages, settings.money());
        List<WorkMonth> work = new SumWork(jobs, wages, rates, paid).months();
        SumEarned sums = new SumEarned(costs, basis, earned);
        List<EarnedMonth> months = sums.months(parts);
        int lastWhole = lastWholeMonth();
        BenchHour hour = new SumBenchHour(work, months, rates, settings, costs.shopRate(), lastWhole).sum();
        return new ShopMoney(
                work,
                months,
                sums.bridges(1),
                sums.bridges(12),
                lastWhole,
                grouping.join(),
                giving.join(),
                hour,
                LoggedShare.of(work, hour.from(), hour.to(), settings.money().leastLoggedShare()),
                basis.leftOut(ledger));
    }

    private int lastWholeMonth() {
        int month = Months.of(ledger.asOf());
        return Months.of(ledger.asOf() + 1) > month ? month : month - 1;
    }

    private Groups groups(OverheadRates rates) {
        SumGroups sums = new SumGroups(costs, basis, rates, earned);
        QuotedLines lines = ledger.lines();
        Families families = Families.of(ledger);
        IntPredicate lately = line -> earned.is(line) && earned.day(line) >= since;
        IntFunction<String> writer = line -> ledger.tickets().quotedBy(lines.ticket(line));
        return new Groups(
                sums.by(line -> "all jobs", lately),
                sums.by(line -> ledger.repairTypes().name(lines.repairType(line)), lately),
                sums.by(line -> families.ofType(lines.repairType(line)), lately),
                sums.by(line -> ledger.tickets().instrumentClass(lines.ticket(line)), lately),
                settings.people() == Disclosure.SHOWN
                        ? sums.by(
                                writer,
                                line -> lately.test(line) && !writer.apply(line).isEmpty())
                        : List.of(),
                sums.by(line -> Words.of(lines.paidBy(line)), lately),
                sums.by(line -> "own stock", line -> earned.isOwnStock(line) && earned.day(line) >= since),
                worst(sums.by(line -> ledger.tickets().ticket(lines.ticket(line)), lately)),
                QuoteOutcome.since(jobs, since));
    }

    private List<GroupMoney> worst(List<GroupMoney> tickets) {
        return tickets.stream()
                .filter(ticket -> basis.wages() && ticket.margin() < 0)
                .sorted(Comparator.comparingLong(GroupMoney::margin).thenComparing(GroupMoney::name))
                .limit(WORST)
                .toList();
    }
}
