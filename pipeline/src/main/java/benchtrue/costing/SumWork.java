package benchtrue.costing;

import benchtrue.hours.EntryPlaces;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.CostBehaviour;
import benchtrue.shop.Months;
import benchtrue.shop.PartUses;
import benchtrue.shop.TimeEntries;
import benchtrue.statistics.LargestRemainder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Sums logged time, its wages and overhead by month worked and by what the time was for. */
final class SumWork {
    private static final WorkKind[] KINDS = WorkKind.values();
    private final JobLines jobs;
    private final Ledger ledger;
    private final TimeEntries time;
    private final Wages wages;
    private final OverheadRates rates;
    private final WorkKinds kinds;
    private final PaidTime paid;
    private final int first;
    private final long[][] seconds;
    private final long[][] costs;
    private final long[] unpriced;
    private final long[] carried;
    private final long[] benchSeconds;
    private final long[] supplies;

    SumWork(JobLines jobs, Wages wages, OverheadRates rates, PaidTime paid) {
        this.jobs = jobs;
        ledger = jobs.ledger();
        time = ledger.time();
        this.wages = wages;
        this.rates = rates;
        this.paid = paid;
        kinds = new WorkKinds(jobs);
        MonthSpan span = MonthSpan.of(ledger);
        first = span.first();
        seconds = new long[span.months()][KINDS.length];
        costs = new long[span.months()][KINDS.length];
        unpriced = new long[span.months()];
        carried = new long[span.months()];
        benchSeconds = new long[span.months()];
        supplies = new long[span.months()];
    }

    /** Returns the months from the first to the last with time, overheads, paid hours or supplies. */
    List<WorkMonth> months() {
        for (int entry = 0; entry < time.size(); entry++) {
            add(entry);
        }
        PartUses uses = ledger.partUses();
        for (int use = 0; use < uses.size() && uses.ticket(use) == Absent.INDEX; use++) {
            supplies[Months.of(uses.usedOn(use)) - first] += uses.get(use).cost();
        }
        List<WorkMonth> months = new ArrayList<>();
        for (int i = 0; i < seconds.length; i++) {
            months.add(month(i));
        }
        return months;
    }

    private void add(int entry) {
        int month = Months.of(time.workDay(entry)) - first;
        long cost = wages.of(entry);
        if (!Absent.has(cost)) {
            unpriced[month] += time.seconds(entry);
        }
        if (MonthSums.onBench(time, entry)) {
            benchSeconds[month] += time.seconds(entry);
            carried[month] = Math.addExact(carried[month], Absent.firstOf(rates.of(entry), 0));
        }
        place(entry, time.seconds(entry), seconds[month]);
        place(entry, Absent.firstOf(cost, 0), costs[month]);
    }

    private void place(int entry, long amount, long[] byKind) {
        switch (jobs.places().place(entry)) {
            case ON_LINE -> byKind[kinds.ofLine(jobs.places().line(entry)).ordinal()] += amount;
            case OVER_TICKET -> kinds.deal(time.ticket(entry), amount, byKind);
            case OVER_TICKETS -> share(entry, amount, byKind);
            case UNQUOTED -> byKind[WorkKind.UNQUOTED.ordinal()] += amount;
            case WITHOUT_LINE -> byKind[WorkKind.WITHOUT_LINE.ordinal()] += amount;
            case BY_KIND -> byKind[WorkKinds.ofTime(time.kind(entry)).ordinal()] += amount;
        }
    }

    private void share(int entry, long amount, long[] byKind) {
        EntryPlaces places = jobs.places();
        int[] tickets = time.sharedTickets(entry);
        long[] parts = LargestRemainder.deal(amount, places.sharedSeconds(entry));
        for (int i = 0; i < tickets.length; i++) {
            kinds.deal(tickets[i], parts[i], byKind);
        }
    }

    private WorkMonth month(int i) {
        int month = first + i;
        boolean priced = !ledger.wages().isEmpty();
        boolean parts = !ledger.missing().contains("parts-usage");
        return new WorkMonth(
                month,
                byKind(seconds[i]),
                priced ? byKind(costs[i]) : unknown(),
                priced ? unpriced[i] : Arrays.stream(seconds[i]).sum(),
                priced ? paid.overtimePremium(month) : Absent.AMOUNT,
                paid.paidSeconds(month),
                paid.loggedSeconds(month),
                priced ? paid.notLoggedCost(month) : Absent.AMOUNT,
                parts ? supplies[i] : Absent.AMOUNT,
                overhead(i));
    }

    private static Map<WorkKind, Long> byKind(long[] amounts) {
        Map<WorkKind, Long> map = new EnumMap<>(WorkKind.class);
        for (WorkKind kind : KINDS) {
            map.put(kind, amounts[kind.ordinal()]);
        }
        return map;
    }

    private static Map<WorkKind, Long> unknown() {
        long[] amounts = new long[KINDS.length];
        Arrays.fill(amounts, Absent.AMOUNT);
        return byKind(amounts);
    }

    private OverheadMonth overhead(int i) {
        int month = first + i;
        if (!rates.recorded(month) || !rates.has(Months.year(month))) {
            return OverheadMonth.UNKNOWN;
        }
        long fixed = rates.actual(month, CostBehaviour.FIXED);
        long variable = rates.actual(month, CostBehaviour.VARIABLE);
        OverheadVariance.Actual actual = new OverheadVariance.Actual(fixed, variable, benchSeconds[i], benchSeconds[i]);
        return new OverheadMonth(
                fixed, variable, carried[i], OverheadVariance.of(actual, rates.ofYear(Months.year(month)), carried[i]));
    }
}
