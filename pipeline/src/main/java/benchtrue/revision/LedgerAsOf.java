package benchtrue.revision;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.PartUses;
import benchtrue.shop.PriceBook;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.QuotedLine;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.Ticket;
import benchtrue.shop.TicketStatus;
import benchtrue.shop.Tickets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The ledger as it stood at the end of an earlier day: visits that had come in, lines that had been quoted, time that had
 * been worked, price books that were in force. What was closed later is open. Codes of names stay; rows are renumbered.
 * Parts and money are left out, since hours do not depend on them.
 */
final class LedgerAsOf {
    private final Ledger ledger;
    private final int day;
    private final int[] closed;
    private final int[] ticketThen;
    private final int[] lineThen;
    private final Tickets tickets;
    private final QuotedLines lines;

    private LedgerAsOf(Ledger ledger, int openedFrom, int day) {
        this.ledger = ledger;
        this.day = day;
        closed = closedOn(ledger);
        ticketThen = new int[ledger.tickets().size()];
        lineThen = new int[ledger.lines().size()];
        number(openedFrom);
        tickets = tickets();
        lines = lines();
    }

    /**
     * Returns what was known.
     *
     * @param openedFrom visits that came in before this day are left out
     * @param day last day that counts
     */
    static Ledger of(Ledger ledger, int openedFrom, int day) {
        LedgerAsOf then = new LedgerAsOf(ledger, openedFrom, day);
        TimeAsOf time = new TimeAsOf(ledger, day, then.ticketThen, then.lineThen);
        return new Ledger(
                day,
                ledger.repairTypes(),
                ledger.technicians(),
                ledger.parts(),
                books(ledger.books(), day),
                then.tickets,
                then.lines,
                time.entries(),
                new PartUses(List.of()),
                List.of(),
                List.of(),
                List.of(),
                time.waits(),
                ledger.completeness().earlier(),
                ledger.missing());
    }

    /** A shop whose first version begins later works by it all the same. */
    private static PriceBooks books(PriceBooks books, int day) {
        List<PriceBook> known = books.versions().stream()
                .filter(version -> version.effective() <= day)
                .toList();
        return new PriceBooks(known.isEmpty() ? books.versions().subList(0, 1) : known);
    }

    /** Returns by ticket the day it was closed; where that was not recorded, the last day that anything happened on it. */
    private static int[] closedOn(Ledger ledger) {
        Tickets tickets = ledger.tickets();
        int[] closed = new int[tickets.size()];
        Arrays.setAll(
                closed,
                ticket -> Absent.firstOf(
                        tickets.closed(ticket), Absent.firstOf(tickets.finished(ticket), tickets.opened(ticket))));
        for (int entry = 0; entry < ledger.time().size(); entry++) {
            int ticket = ledger.time().ticket(entry);
            if (ticket >= 0 && !Absent.has(tickets.closed(ticket))) {
                closed[ticket] = Math.max(closed[ticket], ledger.time().workDay(entry));
            }
        }
        return closed;
    }

    private void number(int openedFrom) {
        int next = 0;
        for (int ticket = 0; ticket < ticketThen.length; ticket++) {
            int opened = ledger.tickets().opened(ticket);
            ticketThen[ticket] = opened >= openedFrom && opened <= day ? next++ : Absent.INDEX;
        }
        next = 0;
        for (int line = 0; line < lineThen.length; line++) {
            int ticket = ledger.lines().ticket(line);
            int quoted = Absent.firstOf(
                    ledger.lines().quotedOn(line), ledger.tickets().opened(ticket));
            lineThen[line] = ticketThen[ticket] >= 0 && quoted <= day ? next++ : Absent.INDEX;
        }
    }

    private Tickets tickets() {
        List<Ticket> rows = new ArrayList<>();
        for (int ticket = 0; ticket < ticketThen.length; ticket++) {
            if (ticketThen[ticket] >= 0) {
                rows.add(then(ticket, ledger.tickets().get(ticket)));
            }
        }
        return new Tickets(rows);
    }

    private Ticket then(int row, Ticket ticket) {
        boolean over = closed[row] <= day;
        return new Ticket(
                ticket.ticket(),
                ticket.opened(),
                ticket.promised(),
                over ? ticket.closed() : Absent.DAY,
                Absent.has(ticket.finished()) && ticket.finished() <= day ? ticket.finished() : Absent.DAY,
                over ? ticket.status() : TicketStatus.OPEN,
                ticket.instrumentClass(),
                ticket.builtYear(),
                ticket.traits(),
                ticket.quotedBy(),
                then(ticketThen, ticket.reworkOf()));
    }

    private QuotedLines lines() {
        List<QuotedLine> rows = new ArrayList<>();
        for (int line = 0; line < lineThen.length; line++) {
            if (lineThen[line] >= 0) {
                rows.add(then(ledger.lines().get(line)));
            }
        }
        return new QuotedLines(rows);
    }

    /** Hours are judged against the first quote, which is older than the day; what was billed later is left out. */
    private QuotedLine then(QuotedLine line) {
        return new QuotedLine(
                ticketThen[line.ticket()],
                line.line(),
                line.repairType(),
                Absent.firstOf(line.firstQuotedSeconds(), line.quotedSeconds()),
                line.quotedLabour(),
                line.quotedParts(),
                line.outcome(),
                line.quotedOn(),
                line.firstQuotedSeconds(),
                line.firstQuotedLabour(),
                Absent.AMOUNT,
                Absent.AMOUNT,
                line.chargeKind(),
                line.quoteBasis(),
                line.paidBy(),
                then(ticketThen, line.reworkOf()),
                then(lineThen, line.reworkOfLine()),
                line.returnReason());
    }

    /** Returns where a row stands then, or {@link Absent#INDEX} where there was none. */
    static int then(int[] rows, int row) {
        return row < 0 ? row : rows[row];
    }
}
