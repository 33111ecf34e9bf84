package benchtrue.costing;

import benchtrue.hours.JobLines;
import benchtrue.hours.LineMark;
import benchtrue.shop.TimeKind;
import benchtrue.statistics.LargestRemainder;

/** Says what each line's hours, and those of each ticket as a whole, are for. */
final class WorkKinds {
    private static final WorkKind[] KINDS = WorkKind.values();
    private static final byte MIXED = -1;
    private final JobLines jobs;
    private final int[] starts;
    private final byte[] ofTicket;

    WorkKinds(JobLines jobs) {
        this.jobs = jobs;
        int tickets = jobs.ledger().tickets().size();
        starts = jobs.ledger().lines().starts(tickets);
        ofTicket = new byte[tickets];
        for (int ticket = 0; ticket < tickets; ticket++) {
            ofTicket[ticket] = summed(ticket);
        }
    }

    /** Returns what the hours of a line are for. */
    WorkKind ofLine(int line) {
        if (!jobs.state(line).accepted()) {
            return WorkKind.WITHOUT_LINE;
        }
        if (jobs.marked(line, LineMark.PUTS_RIGHT)) {
            return WorkKind.PUTTING_RIGHT;
        }
        if (jobs.marked(line, LineMark.SETTLES)) {
            return WorkKind.SETTLING;
        }
        return switch (jobs.ledger().lines().paidBy(line)) {
            case CUSTOMER, TRADE, MAKER_WARRANTY -> WorkKind.SOLD;
            case GOODWILL -> WorkKind.GIVEN;
            case HOUSE -> WorkKind.OWN_STOCK;
        };
    }

    /** Returns what time without a line is for. */
    static WorkKind ofTime(TimeKind kind) {
        return switch (kind) {
            case HANDLING -> WorkKind.HANDLING;
            case QUOTING -> WorkKind.QUOTING;
            case BENCH, SHOP -> WorkKind.SHOP;
        };
    }

    /** Deals an amount of a ticket as a whole over the kinds of its lines, by the seconds split to them. */
    void deal(int ticket, long amount, long[] byKind) {
        if (ofTicket[ticket] != MIXED) {
            byKind[ofTicket[ticket]] += amount;
            return;
        }
        long[] dealt = LargestRemainder.deal(amount, weights(ticket));
        for (int kind = 0; kind < dealt.length; kind++) {
            byKind[kind] += dealt[kind];
        }
    }

    private long[] weights(int ticket) {
        long[] weights = new long[KINDS.length];
        for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
            weights[ofLine(line).ordinal()] += jobs.splitSeconds(line);
        }
        return weights;
    }

    private byte summed(int ticket) {
        int found = WorkKind.WITHOUT_LINE.ordinal();
        boolean any = false;
        for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
            if (jobs.splitSeconds(line) > 0) {
                int kind = ofLine(line).ordinal();
                if (any && kind != found) {
                    return MIXED;
                }
                found = kind;
                any = true;
            }
        }
        return (byte) found;
    }
}
