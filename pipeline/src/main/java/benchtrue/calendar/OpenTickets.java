package benchtrue.calendar;

import benchtrue.costing.CostedLines;
import benchtrue.format.Figures;
import benchtrue.format.Words;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.Outcome;
import benchtrue.shop.TicketStatus;
import benchtrue.shop.Wait;
import benchtrue.shop.WaitReason;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Puts each open ticket in the one place where it stands, the first that fits: finished; waiting, unless it is worked on all
 * the same; not begun; on the bench, or left lying where nobody touched it for longer than is usual for its kind of work.
 */
final class OpenTickets {
    private final CostedLines costs;
    private final Ledger ledger;
    private final TicketDays days;
    private final UsualLengths usual;
    private final GivePromises promises;
    private final Figures figures;
    private final int[] starts;

    OpenTickets(CostedLines costs, TicketDays days, UsualLengths usual, GivePromises promises, Figures figures) {
        this.costs = costs;
        this.days = days;
        this.usual = usual;
        this.promises = promises;
        this.figures = figures;
        ledger = costs.jobs().ledger();
        starts = ledger.lines().starts(ledger.tickets().size());
    }

    /** Returns every open ticket once, in the order of states, those that stand there longest first. */
    List<OpenTicket> place() {
        List<OpenTicket> open = new ArrayList<>();
        for (int ticket = 0; ticket < ledger.tickets().size(); ticket++) {
            if (ledger.tickets().status(ticket) == TicketStatus.OPEN) {
                open.add(place(ticket));
            }
        }
        open.sort(Comparator.comparing(OpenTicket::state)
                .thenComparingInt(OpenTicket::since)
                .thenComparingInt(OpenTicket::ticket));
        return open;
    }

    /** Returns how many open tickets there are, and in which states they stand. */
    static Balance balance(Ledger ledger, List<OpenTicket> open) {
        long all = IntStream.range(0, ledger.tickets().size())
                .filter(ticket -> ledger.tickets().status(ticket) == TicketStatus.OPEN)
                .count();
        return new Balance(
                "open tickets",
                "tickets",
                all,
                Arrays.stream(OpenState.values())
                        .map(state -> new Balance.Term(
                                state.words(),
                                open.stream()
                                        .filter(row -> row.state() == state)
                                        .count()))
                        .toList());
    }

    /** Returns whether a line is one that the customer wants. */
    static boolean isWanted(Ledger ledger, int line) {
        return ledger.lines().outcome(line) != Outcome.DECLINED;
    }

    private OpenTicket place(int ticket) {
        int finished = ledger.tickets().finished(ticket);
        if (Absent.has(finished)) {
            return at(ticket, OpenState.FINISHED, finished, Absent.DAY, "ready to be collected");
        }
        if (starts[ticket + 1] > starts[ticket] && repairs(ticket).isEmpty()) {
            int since = Absent.firstOf(days.last(ticket), ledger.tickets().opened(ticket));
            return at(ticket, OpenState.FINISHED, since, Absent.DAY, "every line declined, to be collected");
        }
        Optional<Wait> wait = wait(ticket);
        return wait.map(now -> waiting(ticket, now)).orElseGet(() -> worked(ticket));
    }

    /** The newest wait that lasts; one since whose beginning somebody worked on lately is over, whatever the record says. */
    private Optional<Wait> wait(int ticket) {
        Wait newest = null;
        for (Wait wait : days.waits(ticket)) {
            boolean lasts = wait.from() <= ledger.asOf() && (!Absent.has(wait.to()) || wait.to() >= ledger.asOf());
            if (lasts) {
                newest = wait;
            }
        }
        boolean worksOn = newest != null
                && days.begun(ticket)
                && days.last(ticket) > newest.from()
                && ledger.asOf() - days.last(ticket) <= usual.pause(ticket);
        return worksOn ? Optional.empty() : Optional.ofNullable(newest);
    }

    private OpenTicket waiting(int ticket, Wait wait) {
        if (wait.reason() == WaitReason.PICK_UP) {
            return at(ticket, OpenState.FINISHED, wait.from(), Absent.DAY, "ready to be collected");
        }
        if (wait.reason() == WaitReason.BENCH && !days.begun(ticket)) {
            return worked(ticket);
        }
        return new OpenTicket(
                ticket,
                OpenState.WAITING,
                wait.from(),
                after(wait.from(), usual.wait(wait.reason())),
                wait.reason(),
                repairs(ticket),
                Words.of(wait.reason()).replace('-', ' '),
                promises.open(ticket),
                worth(ticket));
    }

    private static int after(int day, int days) {
        return Absent.has(days) ? day + days : Absent.DAY;
    }

    private OpenTicket worked(int ticket) {
        if (!days.begun(ticket)) {
            int opened = ledger.tickets().opened(ticket);
            return at(ticket, OpenState.NOT_BEGUN, opened, after(opened, usual.queue()), "no bench time yet");
        }
        int last = days.last(ticket);
        int idle = ledger.asOf() - last - days.waited(ticket, last, ledger.asOf(), TicketDays.BEFORE_READY);
        int pause = usual.pause(ticket);
        return idle > pause
                ? at(
                        ticket,
                        OpenState.STALLED,
                        last,
                        last + pause,
                        "no entry for " + figures.count(idle)
                                + " days and no wait recorded; such work rarely rests for more than "
                                + figures.count(pause))
                : at(ticket, OpenState.ON_BENCH, days.first(ticket), Absent.DAY, "last entry " + figures.day(last));
    }

    private OpenTicket at(int ticket, OpenState state, int since, int until, String reason) {
        boolean lies = state == OpenState.FINISHED || state == OpenState.STALLED;
        int promise = lies ? Absent.DAY : promises.open(ticket);
        return new OpenTicket(ticket, state, since, until, null, repairs(ticket), reason, promise, worth(ticket));
    }

    private List<Integer> repairs(int ticket) {
        return IntStream.range(starts[ticket], starts[ticket + 1])
                .filter(line -> isWanted(ledger, line))
                .map(ledger.lines()::repairType)
                .distinct()
                .boxed()
                .toList();
    }

    private long worth(int ticket) {
        long worth = 0;
        for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
            if (isWanted(ledger, line)) {
                if (!Absent.has(costs.labourRevenue(line))) {
                    return Absent.AMOUNT;
                }
                worth += costs.labourRevenue(line) + Absent.firstOf(costs.partsRevenue(line), 0);
            }
        }
        return worth;
    }
}
