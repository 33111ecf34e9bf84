package benchtrue.hours;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.ReturnReason;
import benchtrue.shop.Tickets;

/** Which lines, and which tickets without lines, put earlier work right (methods, section 3). */
final class Returns {
    private static final ReturnKind[] KINDS = ReturnKind.values();
    private static final int DAYS_A_WEEK = 7;
    private final Ledger ledger;
    private final int[] starts;
    private final byte[] kind;
    private final int[] earlierTicket;

    private Returns(Ledger ledger, int[] starts) {
        this.ledger = ledger;
        this.starts = starts;
        kind = new byte[ledger.lines().size()];
        earlierTicket = new int[kind.length];
    }

    static Returns of(Ledger ledger, int[] starts) {
        Returns returns = new Returns(ledger, starts);
        for (int ticket = 0; ticket < ledger.tickets().size(); ticket++) {
            boolean detailed = returns.detailed(ticket);
            for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
                returns.classify(ticket, line, detailed);
            }
        }
        return returns;
    }

    ReturnKind kind(int line) {
        return KINDS[kind[line]];
    }

    /** Returns the ticket that a line puts right, or {@link Absent#INDEX}. */
    int earlierTicket(int line) {
        return earlierTicket[line];
    }

    /** Returns the ticket that a visit as a whole puts right, or {@link Absent#INDEX}. */
    int earlierTicketOfVisit(int ticket) {
        int earlier = ledger.tickets().reworkOf(ticket);
        return earlier == ticket ? Absent.INDEX : earlier;
    }

    /** A visit whose lines say themselves what they put right may hold new work beside it. */
    private boolean detailed(int ticket) {
        QuotedLines lines = ledger.lines();
        for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
            if (lines.reworkOf(line) >= 0 || lines.reworkOfLine(line) >= 0 || lines.returnReason(line) != null) {
                return true;
            }
        }
        return false;
    }

    private void classify(int ticket, int line, boolean detailed) {
        QuotedLines lines = ledger.lines();
        ReturnReason reason = lines.returnReason(line);
        int earlier = lines.reworkOfLine(line) >= 0 ? lines.ticket(lines.reworkOfLine(line)) : lines.reworkOf(line);
        if (earlier < 0 && (!detailed || reason != null)) {
            earlier = earlierTicketOfVisit(ticket);
        }
        earlierTicket[line] = earlier == ticket ? Absent.INDEX : earlier;
        kind[line] = (byte) kind(ticket, line, reason).ordinal();
    }

    private ReturnKind kind(int ticket, int line, ReturnReason reason) {
        if (reason == null) {
            return earlierTicket[line] >= 0 ? ReturnKind.FAILURE : ReturnKind.NONE;
        }
        return switch (reason) {
            case NEW_DAMAGE -> ReturnKind.NONE;
            case OUR_FAULT, PART -> ReturnKind.FAILURE;
            case SETTLING -> withinFreeWeeks(ticket, line) ? ReturnKind.SETTLING : ReturnKind.NONE;
        };
    }

    private boolean withinFreeWeeks(int ticket, int line) {
        int earlier = earlierTicket[line];
        if (earlier < 0) {
            return false;
        }
        Tickets tickets = ledger.tickets();
        int handedBack = Absent.firstOf(tickets.closed(earlier), tickets.finished(earlier));
        if (!Absent.has(handedBack)) {
            return true;
        }
        return tickets.opened(ticket) - handedBack <= DAYS_A_WEEK * freeWeeks(earlier, line);
    }

    private int freeWeeks(int earlier, int line) {
        QuotedLines lines = ledger.lines();
        if (lines.reworkOfLine(line) >= 0) {
            return freeWeeksOf(lines.reworkOfLine(line));
        }
        int most = 0;
        for (int l = starts[earlier]; l < starts[earlier + 1]; l++) {
            most = Math.max(most, freeWeeksOf(l));
        }
        return most;
    }

    private int freeWeeksOf(int line) {
        QuotedLines lines = ledger.lines();
        PriceBooks books = ledger.books();
        return books.type(ledger.repairTypes().name(lines.repairType(line)), ledger.quotedOn(line))
                .map(type -> type.freeWeeks())
                .orElse(0);
    }
}
