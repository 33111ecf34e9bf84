package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.TextColumn;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.LineColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.Outcome;
import benchtrue.shop.PaidBy;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.QuoteBasis;
import benchtrue.shop.QuotedLine;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.ReturnReason;
import benchtrue.shop.Tickets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongUnaryOperator;
import java.util.stream.IntStream;

/** Builds the quoted lines by ticket then line key. */
final class BuildLines {
    private static final Outcome[] OUTCOMES = Outcome.values();
    private static final ChargeKind[] CHARGE_KINDS = ChargeKind.values();
    private static final QuoteBasis[] QUOTE_BASES = QuoteBasis.values();
    private static final PaidBy[] PAYERS = PaidBy.values();
    private static final ReturnReason[] RETURN_REASONS = ReturnReason.values();
    private final RowDispositions table;
    private final TableRows rows;
    private final Tickets tickets;
    private final TicketKeys keys;
    private final TypeKeys typeKeys;
    private final int[] ticketOf;
    private final int[] typeOf;
    private final int[] lineOf;
    private final String[] lineTexts;
    private final LineKeys lineKeys;

    BuildLines(RowDispositions table, Tickets tickets, TicketKeys keys, TypeKeys typeKeys) {
        this.table = table;
        rows = table.rows();
        this.tickets = tickets;
        this.keys = keys;
        this.typeKeys = typeKeys;
        ticketOf = keys.find(rows.column(LineColumn.TICKET));
        TextColumn lines = rows.column(LineColumn.LINE);
        lineKeys = new LineKeys(lines);
        lineOf = lineKeys.codes(lines);
        lineTexts = IntStream.range(0, lines.distinct()).mapToObj(lines::text).toArray(String[]::new);
        typeOf = typeKeys.find(rows.column(LineColumn.REPAIR_TYPE));
    }

    /**
     * Builds the lines.
     *
     * @param hours turns a price without hours into seconds, or absent
     */
    QuotedLines build(PriceBooks books, int asOf, LongUnaryOperator hours) {
        for (int row = 0; row < table.size(); row++) {
            if (table.inQuestion(row)) {
                check(row, asOf);
            }
        }
        int[] order = RowOrder.sorted(RowOrder.accepted(table), this::ticket, this::lineCode);
        lineKeys.take(
                Arrays.stream(order).map(this::lineCode).toArray(),
                Arrays.stream(order).map(this::ticket).toArray(),
                tickets.size());
        List<QuotedLine> lines = new ArrayList<>(order.length);
        int firstBook = books.versions().get(0).effective();
        for (int row : order) {
            lines.add(quoted(row, hours));
            if (Absent.firstOf(rows.day(LineColumn.QUOTED_ON, row), tickets.opened(ticket(row))) < firstBook) {
                table.doubt(Doubt.QUOTED_BEFORE_FIRST_BOOK, row);
            }
        }
        return new QuotedLines(lines);
    }

    /** Returns the lines' keys; there once the lines are built. */
    LineKeys lineKeys() {
        return lineKeys;
    }

    private void check(int row, int asOf) {
        int ticket = ticket(row);
        if (ticket == TicketKeys.UNKNOWN) {
            String key = rows.text(LineColumn.TICKET, row);
            table.setAside(row, LineColumn.TICKET, key, keys.expected(key));
        }
        if (typeOf[rows.code(LineColumn.REPAIR_TYPE, row)] == TypeKeys.UNKNOWN) {
            String key = rows.text(LineColumn.REPAIR_TYPE, row);
            table.setAside(row, LineColumn.REPAIR_TYPE, key, typeKeys.expected(key));
        }
        if (ticket == TicketKeys.AFTER || rows.day(LineColumn.QUOTED_ON, row) > asOf) {
            table.after(row);
        }
    }

    private int ticket(int row) {
        return ticketOf[rows.code(LineColumn.TICKET, row)];
    }

    private int lineCode(int row) {
        return lineOf[rows.code(LineColumn.LINE, row)];
    }

    private QuotedLine quoted(int row, LongUnaryOperator hours) {
        int reworkOf = earlierTicket(row);
        return new QuotedLine(
                ticket(row),
                lineTexts[rows.code(LineColumn.LINE, row)],
                typeOf[rows.code(LineColumn.REPAIR_TYPE, row)],
                quotedSeconds(row, hours),
                rows.value(LineColumn.QUOTED_LABOUR, row),
                rows.value(LineColumn.QUOTED_PARTS, row),
                word(LineColumn.OUTCOME, row, OUTCOMES),
                rows.day(LineColumn.QUOTED_ON, row),
                first(row, LineColumn.FIRST_QUOTED_HOURS, LineColumn.QUOTED_HOURS),
                first(row, LineColumn.FIRST_QUOTED_LABOUR, LineColumn.QUOTED_LABOUR),
                rows.value(LineColumn.BILLED_LABOUR, row),
                rows.value(LineColumn.BILLED_PARTS, row),
                word(LineColumn.CHARGE_KIND, row, CHARGE_KINDS),
                word(LineColumn.QUOTE_BASIS, row, QUOTE_BASES),
                word(LineColumn.PAID_BY, row, PAYERS),
                reworkOf,
                earlierLine(row, reworkOf),
                Absent.has(rows.value(LineColumn.RETURN_REASON, row))
                        ? word(LineColumn.RETURN_REASON, row, RETURN_REASONS)
                        : null);
    }

    private long quotedSeconds(int row, LongUnaryOperator hours) {
        long quoted = rows.value(LineColumn.QUOTED_HOURS, row);
        long priced = quoted > 0 ? Absent.AMOUNT : hours.applyAsLong(rows.value(LineColumn.QUOTED_LABOUR, row));
        if (priced > 0) {
            table.doubt(Doubt.HOURS_FROM_PRICE, row);
            return priced;
        }
        return quoted;
    }

    /** Returns the word of a cell; the first of the words is what an empty cell means. */
    private <E> E word(Column column, int row, E[] words) {
        long place = rows.value(column, row);
        return words[Absent.has(place) ? (int) place : 0];
    }

    /** Returns the figure of the first quote: stated, else of the oldest export that says something else. */
    private long first(int row, Column stated, Column quoted) {
        long first = rows.value(stated, row);
        for (int older : Absent.has(first) ? List.<Integer>of() : table.replaced(row)) {
            long figure = rows.readable(older) ? rows.value(quoted, older) : Absent.AMOUNT;
            boolean accepted = word(LineColumn.OUTCOME, older, OUTCOMES) == Outcome.ACCEPTED;
            first = Absent.has(figure) && figure > 0 && accepted ? figure : first;
        }
        return first;
    }

    private int earlierTicket(int row) {
        int found = keys.find(rows.text(LineColumn.REWORK_OF, row));
        if (found < Absent.INDEX) {
            table.doubt(Doubt.UNKNOWN_EARLIER_TICKET, row);
        }
        String line = rows.text(LineColumn.REWORK_OF_LINE, row);
        if (found >= 0 && found == ticket(row) && (line.isEmpty() || lineKeys.code(line) == lineCode(row))) {
            table.doubt(Doubt.CIRCULAR_REWORK, row);
            return Absent.INDEX;
        }
        return Math.max(found, Absent.INDEX);
    }

    private int earlierLine(int row, int ticket) {
        String line = rows.text(LineColumn.REWORK_OF_LINE, row);
        if (line.isEmpty() || ticket == Absent.INDEX) {
            return Absent.INDEX;
        }
        int found = lineKeys.find(ticket, lineKeys.code(line));
        if (found == Absent.INDEX) {
            table.doubt(Doubt.UNKNOWN_EARLIER_TICKET, row);
        }
        return found;
    }
}
