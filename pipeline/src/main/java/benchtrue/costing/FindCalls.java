package benchtrue.costing;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.PaidBy;
import benchtrue.shop.QuoteBasis;
import benchtrue.shop.Wait;
import benchtrue.shop.WaitReason;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/** Finds the open instruments whose owners should be called, the most money beyond the quote first. */
final class FindCalls {
    /** A job that has begun and is expected to need so much more than quoted is worth a call. */
    private static final double CLEARLY_MORE = 1.25;

    private static final double LIKELY = 0.5;
    private static final double SURELY_LATE = 0.8;
    private final CostedLines costs;
    private final Ledger ledger;
    private final TreeMap<Integer, Draft> drafts = new TreeMap<>();

    private static final class Draft {
        private final Set<Call.Reason> reasons = EnumSet.noneOf(Call.Reason.class);
        private long quotedSeconds;
        private long secondsSoFar;
        private double expectedHours;
        private long moreMoney;
    }

    FindCalls(CostedLines costs) {
        this.costs = costs;
        ledger = costs.jobs().ledger();
    }

    List<Call> find(List<OpenLine> lines, List<Promise> promises) {
        for (OpenLine line : lines) {
            if (ledger.lines().paidBy(line.line()) != PaidBy.HOUSE) {
                add(line);
            }
        }
        promises.forEach(this::add);
        ledger.waits().forEach(this::add);
        List<Call> calls = new ArrayList<>();
        drafts.forEach((ticket, draft) -> {
            if (!draft.reasons.isEmpty()) {
                calls.add(new Call(
                        ticket,
                        draft.reasons,
                        draft.quotedSeconds,
                        draft.secondsSoFar,
                        draft.expectedHours,
                        draft.moreMoney));
            }
        });
        calls.sort(Comparator.comparingLong(Call::moreMoney).reversed().thenComparingInt(Call::ticket));
        return calls;
    }

    private void add(OpenLine line) {
        int ticket = ledger.lines().ticket(line.line());
        Draft draft = drafts.computeIfAbsent(ticket, key -> new Draft());
        draft.secondsSoFar += line.secondsSoFar();
        if (!Absent.has(line.quotedSeconds())) {
            return;
        }
        draft.quotedSeconds += line.quotedSeconds();
        draft.expectedHours += line.expectedHours();
        boolean begun = line.secondsSoFar() > 0 && ledger.lines().quoteBasis(line.line()) != QuoteBasis.TIME;
        double quoted = Hours.of(line.quotedSeconds());
        boolean clearly = line.expectedHours() > CLEARLY_MORE * quoted && line.chanceOver() > LIKELY;
        if (begun && line.secondsSoFar() > line.quotedSeconds()) {
            draft.reasons.add(Call.Reason.OVER_THE_QUOTE);
        } else if (begun && clearly) {
            draft.reasons.add(Call.Reason.LIKELY_OVER);
        }
        if (begun && (clearly || line.secondsSoFar() > line.quotedSeconds())) {
            draft.moreMoney += more(line.expectedHours() - quoted);
        }
    }

    private long more(double hours) {
        long seconds = (long) StrictMath.rint(hours * Hours.SECONDS);
        return Absent.has(costs.shopRate()) ? Math.max(0, Money.perHour(costs.shopRate(), seconds)) : 0;
    }

    private void add(Promise promise) {
        Draft draft = drafts.get(promise.ticket());
        if (draft == null) {
            return;
        }
        if (promise.promised() < ledger.asOf()) {
            draft.reasons.add(Call.Reason.OVERDUE);
        } else if (promise.chanceLate() > SURELY_LATE) {
            draft.reasons.add(Call.Reason.LIKELY_LATE);
        }
    }

    private void add(Wait wait) {
        Draft draft = drafts.get(wait.ticket());
        boolean waits = !Absent.has(wait.to()) || wait.to() >= ledger.asOf();
        if (draft != null && waits && wait.reason() == WaitReason.APPROVAL) {
            draft.reasons.add(Call.Reason.WAITS_FOR_APPROVAL);
        }
    }
}
