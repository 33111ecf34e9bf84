package benchtrue.hours;

import benchtrue.reconcile.Ledger;
import benchtrue.statistics.LargestRemainder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Carries the hours of returns back to the lines that failed, as a memo (methods, section 3). A return of a return goes to
 * the first job: the latest visit is carried first.
 */
final class TraceRework {
    private final Ledger ledger;
    private final LineFacts facts;
    private final Returns returns;
    private final PlacedTime placed;
    private final long[] actualSeconds;
    final long[] reworkSeconds;
    final long[] settlingSeconds;
    final boolean[] shared;
    final boolean[] withoutReason;

    TraceRework(Ledger ledger, LineFacts facts, Returns returns, PlacedTime placed, long[] actualSeconds) {
        this.ledger = ledger;
        this.facts = facts;
        this.returns = returns;
        this.placed = placed;
        this.actualSeconds = actualSeconds;
        reworkSeconds = new long[actualSeconds.length];
        settlingSeconds = new long[actualSeconds.length];
        shared = new boolean[actualSeconds.length];
        withoutReason = new boolean[actualSeconds.length];
    }

    /** A line that came back, or with line -1 a visit that has none. */
    private record Return(int opened, int ticket, int line) {}

    void trace() {
        List<Return> all = new ArrayList<>();
        for (int line = 0; line < actualSeconds.length; line++) {
            if (returns.kind(line) != ReturnKind.NONE && facts.accepted(line)) {
                all.add(new Return(ledger.tickets().opened(facts.ticket[line]), facts.ticket[line], line));
            }
        }
        for (int ticket = 0; ticket < placed.withoutLineSeconds.length; ticket++) {
            if (placed.withoutLineSeconds[ticket] > 0 && returns.earlierTicketOfVisit(ticket) >= 0) {
                all.add(new Return(ledger.tickets().opened(ticket), ticket, -1));
            }
        }
        all.sort(Comparator.comparingInt(Return::opened)
                .thenComparingInt(Return::ticket)
                .thenComparingInt(Return::line)
                .reversed());
        all.forEach(this::carry);
    }

    private void carry(Return from) {
        if (from.line < 0) {
            int earlier = returns.earlierTicketOfVisit(from.ticket);
            add(weights(earlier, -1), earlier, placed.withoutLineSeconds[from.ticket], 0, true);
            return;
        }
        int line = from.line;
        boolean failure = returns.kind(line) == ReturnKind.FAILURE;
        long rework = reworkSeconds[line] + (failure ? actualSeconds[line] : 0);
        long settling = settlingSeconds[line] + (failure ? 0 : actualSeconds[line]);
        boolean unexplained = failure && ledger.lines().returnReason(line) == null;
        int named = ledger.lines().reworkOfLine(line);
        int earlier = named >= 0 ? facts.ticket[named] : returns.earlierTicket(line);
        if (earlier < 0 || named == line) {
            return;
        }
        double[] weights = named >= 0 ? only(named) : weights(earlier, facts.type[line]);
        if (add(weights, earlier, rework, settling, unexplained)) {
            reworkSeconds[line] = 0;
            settlingSeconds[line] = 0;
        }
    }

    private double[] only(int line) {
        int ticket = facts.ticket[line];
        double[] weights = new double[facts.starts[ticket + 1] - facts.starts[ticket]];
        weights[line - facts.starts[ticket]] = 1;
        return weights;
    }

    /** Returns by line of a ticket how likely it is what failed: of the same repair type, else by its quote. */
    private double[] weights(int ticket, int type) {
        int from = facts.starts[ticket];
        double[] weights = new double[facts.starts[ticket + 1] - from];
        boolean sameType = false;
        for (int i = 0; i < weights.length; i++) {
            sameType |= facts.accepted(from + i) && facts.type[from + i] == type;
        }
        for (int i = 0; i < weights.length; i++) {
            boolean counts = facts.takesHours[from + i] && (!sameType || facts.type[from + i] == type);
            weights[i] = counts ? facts.quoteHours[from + i] : 0;
        }
        return weights;
    }

    /** Returns whether there was a line to carry to. */
    private boolean add(double[] weights, int ticket, long rework, long settling, boolean unexplained) {
        int from = facts.starts[ticket];
        long failed = Arrays.stream(weights).filter(w -> w > 0).count();
        if (failed == 0) {
            return false;
        }
        long[] reworkParts = LargestRemainder.deal(rework, weights);
        long[] settlingParts = LargestRemainder.deal(settling, weights);
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] > 0) {
                reworkSeconds[from + i] += reworkParts[i];
                settlingSeconds[from + i] += settlingParts[i];
                shared[from + i] |= failed > 1 && reworkParts[i] > 0;
                withoutReason[from + i] |= unexplained && reworkParts[i] > 0;
            }
        }
        return true;
    }
}
