package benchtrue.costing;

import benchtrue.costing.SealedMonth.Figure;
import benchtrue.costing.SealedMonth.Part;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.Months;
import benchtrue.shop.Overhead;
import benchtrue.shop.TimeEntries;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Takes down the figures of a month, so that a later correction shows as a restatement and rewrites nothing. */
public final class SealMonth {
    static final String NO_TICKET = "(no ticket)";
    static final String SEVERAL_TICKETS = "(several tickets)";
    private final List<Figure> figures = new ArrayList<>();

    /**
     * Returns the figures of a month as the records tell them now.
     *
     * @param month {@code year * 12 + month - 1}, over on the as-of date
     */
    public SealedMonth seal(CostedLines costs, Settings settings, int month) {
        SealMonth seal = new SealMonth();
        seal.rates(costs, settings, month);
        seal.earned(costs, month);
        seal.worked(costs, settings, month);
        seal.overheads(costs.jobs().ledger(), month);
        return new SealedMonth(month, costs.jobs().ledger().asOf(), seal.figures);
    }

    private void rates(CostedLines costs, Settings settings, int month) {
        long rate =
                new OverheadRates(costs.jobs().ledger(), settings.money().overheadRate()).hourly(Months.year(month));
        add(Part.RATE, "", "overhead_rate", Money.text(rate));
        add(Part.RATE, "", "burden", BigDecimal.valueOf(settings.burden()).toPlainString());
    }

    private void earned(CostedLines costs, int month) {
        for (EarnedMonth row : costs.shop().earned()) {
            if (row.month() == month) {
                add(Part.EARNED, "", "jobs", Integer.toString(row.lines()));
                add(Part.EARNED, "", "jobs_left_out", Integer.toString(row.leftOut()));
                add(Part.EARNED, "", "actual_hours", Hours.text(row.actualSeconds()));
                money(Part.EARNED, "", "labour_revenue", row.labourRevenue());
                money(Part.EARNED, "", "parts_revenue", row.partsRevenue());
                money(Part.EARNED, "", "labour_cost", row.labourCost());
                money(Part.EARNED, "", "parts_cost", row.partsCost());
                money(Part.EARNED, "", "overhead_cost", row.overheadCost());
                money(Part.EARNED, "", "margin", row.margin());
            }
        }
        tickets(costs, month);
    }

    private void tickets(CostedLines costs, int month) {
        JobLines jobs = costs.jobs();
        Earned earned = new Earned(jobs);
        MarginBasis basis = MarginBasis.of(jobs.ledger());
        OverheadRates none = new OverheadRates(jobs.ledger(), Absent.AMOUNT);
        List<GroupMoney> tickets = new SumGroups(costs, basis, none, earned)
                .by(
                        line -> jobs.ledger()
                                .tickets()
                                .ticket(jobs.ledger().lines().ticket(line)),
                        line -> earned.is(line) && Months.of(earned.day(line)) == month);
        tickets.stream().sorted((a, b) -> a.name().compareTo(b.name())).forEach(ticket -> {
            add(Part.EARNED, ticket.name(), "jobs", Integer.toString(ticket.lines()));
            add(Part.EARNED, ticket.name(), "jobs_left_out", Integer.toString(ticket.leftOut()));
            add(Part.EARNED, ticket.name(), "actual_hours", Hours.text(ticket.actualSeconds()));
            money(Part.EARNED, ticket.name(), "labour_revenue", ticket.labourRevenue());
            money(Part.EARNED, ticket.name(), "parts_revenue", ticket.partsRevenue());
            money(Part.EARNED, ticket.name(), "labour_cost", ticket.labourCost());
            money(Part.EARNED, ticket.name(), "parts_cost", ticket.partsCost());
            money(Part.EARNED, ticket.name(), "overhead_cost", ticket.overheadCost());
            money(Part.EARNED, ticket.name(), "margin", ticket.margin());
        });
    }

    private void worked(CostedLines costs, Settings settings, int month) {
        for (WorkMonth row : costs.shop().work()) {
            if (row.month() == month) {
                add(Part.WORKED, "", "logged_hours", Hours.text(row.loggedSeconds()));
                money(Part.WORKED, "", "wages", row.allWages());
                add(Part.WORKED, "", "paid_hours", Hours.text(row.paidSeconds()));
                money(Part.WORKED, "", "overtime_premium", row.overtimePremium());
                money(Part.OVERHEAD, "", "amount", row.overhead().actual());
                money(Part.OVERHEAD, "", "carried", row.overhead().carried());
            }
        }
        timeByTicket(costs.jobs().ledger(), settings, month);
    }

    private void timeByTicket(Ledger ledger, Settings settings, int month) {
        Wages wages = new Wages(ledger, settings.burden());
        TimeEntries time = ledger.time();
        TreeMap<String, long[]> sums = new TreeMap<>();
        for (int entry = 0; entry < time.size(); entry++) {
            if (Months.of(time.workDay(entry)) == month) {
                long[] sum = sums.computeIfAbsent(key(ledger, entry), key -> new long[2]);
                sum[0] += time.seconds(entry);
                sum[1] += Absent.firstOf(wages.of(entry), 0);
            }
        }
        sums.forEach((ticket, sum) -> {
            add(Part.WORKED, ticket, "logged_hours", Hours.text(sum[0]));
            money(Part.WORKED, ticket, "wages", ledger.wages().isEmpty() ? Absent.AMOUNT : sum[1]);
        });
    }

    private static String key(Ledger ledger, int entry) {
        int ticket = ledger.time().ticket(entry);
        return switch (ticket) {
            case Absent.INDEX -> NO_TICKET;
            case TimeEntries.SHARED -> SEVERAL_TICKETS;
            default -> ledger.tickets().ticket(ticket);
        };
    }

    private void overheads(Ledger ledger, int month) {
        for (Overhead row : ledger.overheads()) {
            if (row.month() == month) {
                money(Part.OVERHEAD, row.account(), "amount", row.amount());
            }
        }
    }

    private void money(Part part, String key, String name, long amount) {
        add(part, key, name, Money.text(amount));
    }

    private void add(Part part, String key, String name, String value) {
        figures.add(new Figure(part, key, name, value));
    }
}
