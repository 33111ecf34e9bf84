package benchtrue.costing;

import benchtrue.format.Words;
import benchtrue.hours.JobLines;
import benchtrue.hours.LineMark;
import benchtrue.hours.UnquotedWork;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import benchtrue.shop.PaidBy;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.RepairType;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Finds what was given away and to whom: unquoted work, goodwill, settling, failures put right, discounts. */
final class GiveAway {
    private static final Comparator<Kind> ORDER =
            Comparator.comparing(Kind::what).thenComparing(Kind::toWhom);
    private final CostedLines costs;
    private final JobLines jobs;
    private final Ledger ledger;
    private final QuotedLines lines;
    private final Earned earned;
    private final int since;
    private final int[] starts;
    private final Map<Kind, List<Given>> gifts = new TreeMap<>();

    private record Kind(String what, String toWhom) implements Comparable<Kind> {
        @Override
        public int compareTo(Kind other) {
            return ORDER.compare(this, other);
        }
    }

    GiveAway(CostedLines costs, Earned earned, int since) {
        this.costs = costs;
        this.earned = earned;
        this.since = since;
        jobs = costs.jobs();
        ledger = jobs.ledger();
        lines = ledger.lines();
        starts = lines.starts(ledger.tickets().size());
    }

    /** Returns what was given since a day, the largest worth first. */
    List<Gift> find() {
        for (UnquotedWork work : jobs.unquoted()) {
            if (ledger.tickets().opened(work.ticket()) >= since) {
                add(
                        Gift.UNQUOTED,
                        payer(work.ticket()),
                        new Given(work.ticket(), work.repairType(), work.seconds(), atRate(work.seconds())));
            }
        }
        for (int line = 0; line < jobs.size(); line++) {
            if (earned.is(line) && earned.day(line) >= since) {
                addLine(line);
            }
        }
        List<Gift> found = new ArrayList<>();
        gifts.forEach((kind, rows) -> found.add(Gift.of(kind.what, kind.toWhom, rows)));
        found.sort(Comparator.comparingLong(Gift::worth).reversed().thenComparing(Gift::what));
        return found;
    }

    private void addLine(int line) {
        long seconds = jobs.actualSeconds(line);
        long brought = Absent.firstOf(costs.labourRevenue(line), 0);
        PaidBy payer = lines.paidBy(line);
        if (jobs.marked(line, LineMark.PUTS_RIGHT)) {
            add(Gift.PUTTING_RIGHT, payer, given(line, seconds, atRate(seconds) - brought));
        } else if (jobs.marked(line, LineMark.SETTLES)) {
            add(Gift.SETTLING, payer, given(line, seconds, atRate(seconds) - brought));
        } else if (payer == PaidBy.GOODWILL) {
            add(Gift.GOODWILL, payer, given(line, seconds, Absent.firstOf(quoted(line), atRate(seconds)) - brought));
        } else if (payer == PaidBy.TRADE) {
            add(Gift.BELOW_THE_BOOK, payer, given(line, 0, atBook(line) - brought));
        } else if (Absent.has(lines.billedLabour(line)) && Absent.has(quoted(line))) {
            add(Gift.DISCOUNT, payer, given(line, 0, quoted(line) - lines.billedLabour(line)));
        }
    }

    private long quoted(int line) {
        return Absent.firstOf(lines.firstQuotedLabour(line), lines.quotedLabour(line));
    }

    private long atRate(long seconds) {
        return Absent.has(costs.shopRate()) ? Money.perHour(costs.shopRate(), seconds) : 0;
    }

    /** The hours quoted at the book's price of an hour on the day of the quote. */
    private long atBook(int line) {
        Optional<RepairType> book =
                ledger.books().type(ledger.repairTypes().name(lines.repairType(line)), ledger.quotedOn(line));
        long seconds = lines.judgedSeconds(line);
        return book.filter(type -> type.bookSeconds() > 0 && seconds > 0)
                .map(type -> Rate.scaled(type.bookLabour(), seconds, type.bookSeconds()))
                .orElse(0L);
    }

    private PaidBy payer(int ticket) {
        for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
            if (jobs.state(line).accepted()) {
                return lines.paidBy(line);
            }
        }
        return PaidBy.CUSTOMER;
    }

    private Given given(int line, long seconds, long worth) {
        return new Given(lines.ticket(line), lines.repairType(line), seconds, worth);
    }

    private void add(String what, PaidBy toWhom, Given given) {
        if (given.worth() > 0) {
            gifts.computeIfAbsent(new Kind(what, Words.of(toWhom)), kind -> new ArrayList<>())
                    .add(given);
        }
    }
}
