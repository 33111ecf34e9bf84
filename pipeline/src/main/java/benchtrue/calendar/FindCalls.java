package benchtrue.calendar;

import benchtrue.costing.CostedLines;
import benchtrue.hours.UnquotedWork;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.PaidBy;
import benchtrue.shop.QuoteBasis;
import benchtrue.shop.WaitReason;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * Finds the open instruments about which somebody should be called, those first whose call saves most. Work for the house is
 * nobody's to ask about; work by the hour can't go over its quote.
 */
final class FindCalls {
    /** An hour's work beyond the quote is worth a call where it is this likely ... */
    private static final double LIKELY = 2 / 3.0;

    /** ... and one that is clearly more than quoted even at even odds. */
    private static final double EVEN = 0.5;

    private static final double CLEARLY_MORE = 1.25;
    private static final double LEAST_HOURS = 0.5;
    private static final int MONTH = 30;
    private final CostedLines costs;
    private final Ledger ledger;
    private final int[] starts;
    private final UsualLengths usual;
    private final TellCall tell;
    private final TreeMap<Integer, CallDraft> drafts = new TreeMap<>();

    FindCalls(CostedLines costs, UsualLengths usual, TellCall tell) {
        this.costs = costs;
        this.usual = usual;
        this.tell = tell;
        ledger = costs.jobs().ledger();
        starts = ledger.lines().starts(ledger.tickets().size());
    }

    List<Call> find(List<OpenTicket> open, Backlog backlog) {
        open.forEach(ticket -> drafts.put(ticket.ticket(), new CallDraft(ticket)));
        backlog.lines().forEach(this::overrun);
        costs.jobs().unquoted().forEach(this::neverQuoted);
        backlog.promises().forEach(this::promise);
        open.forEach(this::standing);
        return drafts.values().stream()
                .filter(CallDraft::isCall)
                .map(CallDraft::call)
                .sorted(Comparator.comparingLong(Call::saves)
                        .thenComparingLong(call -> Absent.firstOf(call.worth(), 0))
                        .reversed()
                        .thenComparingInt(Call::ticket))
                .toList();
    }

    private boolean asks(int line) {
        PaidBy payer = ledger.lines().paidBy(line);
        return payer != PaidBy.HOUSE && payer != PaidBy.GOODWILL;
    }

    private void overrun(OpenLine line) {
        CallDraft draft = drafts.get(ledger.lines().ticket(line.line()));
        if (draft == null || !asks(line.line()) || draft.ticket().state() == OpenState.FINISHED) {
            return;
        }
        long quoted = line.quotedSeconds();
        boolean known = Absent.has(quoted) && Double.isFinite(line.expectedHours());
        draft.hours(known ? quoted : 0, line.secondsSoFar(), known ? line.expectedHours() : 0);
        if (!known || ledger.lines().quoteBasis(line.line()) == QuoteBasis.TIME) {
            return;
        }
        double ahead = line.expectedHours() - Hours.of(Math.max(quoted, line.secondsSoFar()));
        long saves = atRate(ahead);
        if (line.secondsSoFar() > quoted) {
            draft.add(tell.usedUp(line, ahead, saves));
        } else if (isLikelyOver(line, ahead)) {
            draft.add(tell.likelyOver(line, draft.ticket().state() == OpenState.NOT_BEGUN, saves));
        }
    }

    private static boolean isLikelyOver(OpenLine line, double ahead) {
        boolean clearly = line.expectedHours() > CLEARLY_MORE * Hours.of(line.quotedSeconds());
        return ahead >= LEAST_HOURS && line.chanceOver() > (clearly ? EVEN : LIKELY);
    }

    private long atRate(double hours) {
        long seconds = (long) StrictMath.rint(hours * Hours.SECONDS);
        return Absent.has(costs.shopRate()) ? Math.max(0, Money.perHour(costs.shopRate(), seconds)) : 0;
    }

    private void neverQuoted(UnquotedWork work) {
        CallDraft draft = drafts.get(work.ticket());
        if (draft != null && work.seconds() > 0 && !draft.ticket().repairs().isEmpty() && isAsked(work.ticket())) {
            draft.add(tell.neverQuoted(work, atRate(Hours.of(work.seconds()))));
        }
    }

    /** Returns whether somebody other than the shop pays for any of the ticket. */
    private boolean isAsked(int ticket) {
        for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
            if (asks(line)) {
                return true;
            }
        }
        return starts[ticket] == starts[ticket + 1];
    }

    private void promise(Promise promise) {
        CallDraft draft = drafts.get(promise.ticket());
        if (draft.ticket().state() == OpenState.FINISHED || !isAsked(promise.ticket())) {
            return;
        }
        if (promise.promised() < ledger.asOf()) {
            draft.add(tell.overdue(promise, draft.ticket()));
        } else if (promise.atRisk()) {
            draft.add(tell.likelyLate(promise, draft.ticket()));
        }
    }

    private void standing(OpenTicket ticket) {
        if (!isAsked(ticket.ticket())) {
            return;
        }
        CallDraft draft = drafts.get(ticket.ticket());
        int days = ledger.asOf() - ticket.since();
        if (ticket.state() == OpenState.FINISHED && days > Absent.firstOf(usual.collecting(), MONTH)) {
            double stands = usual.stillThere(days);
            long saves = Absent.has(ticket.worth()) ? (long) StrictMath.rint(stands * ticket.worth()) : 0;
            draft.add(tell.notCollected(ticket, stands, saves));
        } else if (ticket.state() == OpenState.WAITING && ticket.waitsFor() == WaitReason.APPROVAL) {
            draft.add(tell.approval(ticket));
        } else if (ticket.state() == OpenState.WAITING
                && Absent.has(ticket.until())
                && ticket.until() < ledger.asOf()) {
            draft.add(tell.waitsTooLong(ticket));
        }
    }
}
