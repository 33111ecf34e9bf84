package benchtrue.calendar;

import benchtrue.shop.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;

/** The call about one ticket while its reasons are gathered. */
final class CallDraft {
    private final OpenTicket ticket;
    private final List<Ground> grounds = new ArrayList<>();
    private long quotedSeconds;
    private long secondsSoFar;
    private double expectedHours;

    CallDraft(OpenTicket ticket) {
        this.ticket = ticket;
    }

    /**
     * One ground for the call.
     *
     * @param saves money likely lost without it, in ten-thousandths; 0 where none is known to be
     * @param why in the middle of a sentence
     * @param cost a sentence
     * @param say what to say
     */
    record Ground(Call.Reason reason, long saves, String why, String cost, String say) {}

    OpenTicket ticket() {
        return ticket;
    }

    void add(Ground ground) {
        grounds.add(ground);
    }

    void hours(long quoted, long soFar, double expected) {
        quotedSeconds += quoted;
        secondsSoFar += soFar;
        expectedHours += expected;
    }

    boolean isCall() {
        return !grounds.isEmpty();
    }

    /** Returns the call: its grounds in the order of what they save, and what is said about the first. */
    Call call() {
        List<Ground> ordered = grounds.stream()
                .sorted(Comparator.comparingLong(Ground::saves).reversed().thenComparing(Ground::reason))
                .toList();
        String why =
                String.join("; ", ordered.stream().map(Ground::why).distinct().toList());
        if (ticket.state() == OpenState.NOT_BEGUN && has(Call.Reason.LIKELY_OVER)) {
            why += "; work has not begun";
        }
        return new Call(
                ticket.ticket(),
                EnumSet.copyOf(ordered.stream().map(Ground::reason).toList()),
                ticket.repairs(),
                quotedSeconds,
                secondsSoFar,
                expectedHours,
                whole(ordered.stream().mapToLong(Ground::saves).sum()),
                ticket.worth(),
                why.substring(0, 1).toUpperCase(Locale.ROOT) + why.substring(1) + ".",
                ordered.get(0).cost(),
                ordered.get(0).say());
    }

    private boolean has(Call.Reason reason) {
        return grounds.stream().anyMatch(ground -> ground.reason() == reason);
    }

    /** An estimate is no more exact than a whole unit of the currency. */
    private static long whole(long amount) {
        return StrictMath.round(amount / (double) Money.UNIT) * Money.UNIT;
    }
}
