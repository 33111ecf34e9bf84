package benchtrue.shop;

import java.util.ArrayList;
import java.util.List;

/** All quoted lines as columns, in the order of ticket then line key, so that a ticket's lines stand together. */
public final class QuotedLines {
    private static final Outcome[] OUTCOMES = Outcome.values();
    private static final ChargeKind[] CHARGE_KINDS = ChargeKind.values();
    private static final QuoteBasis[] QUOTE_BASISS = QuoteBasis.values();
    private static final PaidBy[] PAID_BYS = PaidBy.values();
    private static final ReturnReason[] RETURN_REASONS = ReturnReason.values();

    private final Ints ticket;
    private final List<String> line;
    private final Ints repairType;
    private final Longs quotedSeconds;
    private final Longs quotedLabour;
    private final Longs quotedParts;
    private final Bytes outcome;
    private final Ints quotedOn;
    private final Longs firstQuotedSeconds;
    private final Longs firstQuotedLabour;
    private final Longs billedLabour;
    private final Longs billedParts;
    private final Bytes chargeKind;
    private final Bytes quoteBasis;
    private final Bytes paidBy;
    private final Ints reworkOf;
    private final Ints reworkOfLine;
    private final Bytes returnReason;

    private QuotedLines(int room) {
        ticket = new Ints(room);
        line = new ArrayList<>(room);
        repairType = new Ints(room);
        quotedSeconds = new Longs(room);
        quotedLabour = new Longs(room);
        quotedParts = new Longs(room);
        outcome = new Bytes(room);
        quotedOn = new Ints(room);
        firstQuotedSeconds = new Longs(room);
        firstQuotedLabour = new Longs(room);
        billedLabour = new Longs(room);
        billedParts = new Longs(room);
        chargeKind = new Bytes(room);
        quoteBasis = new Bytes(room);
        paidBy = new Bytes(room);
        reworkOf = new Ints(room);
        reworkOfLine = new Ints(room);
        returnReason = new Bytes(room);
    }

    /** Returns how many rows there are. */
    public int size() {
        return ticket.size();
    }

    /** Returns a row as a value; for reading a few, not for loops over millions. */
    public QuotedLine get(int row) {
        return new QuotedLine(
                ticket(row),
                line(row),
                repairType(row),
                quotedSeconds(row),
                quotedLabour(row),
                quotedParts(row),
                outcome(row),
                quotedOn(row),
                firstQuotedSeconds(row),
                firstQuotedLabour(row),
                billedLabour(row),
                billedParts(row),
                chargeKind(row),
                quoteBasis(row),
                paidBy(row),
                reworkOf(row),
                reworkOfLine(row),
                returnReason(row));
    }

    /** Returns {@link QuotedLine#ticket} of a row. */
    public int ticket(int row) {
        return ticket.get(row);
    }

    /** Returns {@link QuotedLine#line} of a row. */
    public String line(int row) {
        return line.get(row);
    }

    /** Returns {@link QuotedLine#repairType} of a row. */
    public int repairType(int row) {
        return repairType.get(row);
    }

    /** Returns {@link QuotedLine#quotedSeconds} of a row. */
    public long quotedSeconds(int row) {
        return quotedSeconds.get(row);
    }

    /** Returns {@link QuotedLine#quotedLabour} of a row. */
    public long quotedLabour(int row) {
        return quotedLabour.get(row);
    }

    /** Returns {@link QuotedLine#quotedParts} of a row. */
    public long quotedParts(int row) {
        return quotedParts.get(row);
    }

    /** Returns {@link QuotedLine#outcome} of a row. */
    public Outcome outcome(int row) {
        return OUTCOMES[outcome.get(row)];
    }

    /** Returns {@link QuotedLine#quotedOn} of a row. */
    public int quotedOn(int row) {
        return quotedOn.get(row);
    }

    /** Returns {@link QuotedLine#firstQuotedSeconds} of a row. */
    public long firstQuotedSeconds(int row) {
        return firstQuotedSeconds.get(row);
    }

    /** Returns {@link QuotedLine#firstQuotedLabour} of a row. */
    public long firstQuotedLabour(int row) {
        return firstQuotedLabour.get(row);
    }

    /** Returns {@link QuotedLine#billedLabour} of a row. */
    public long billedLabour(int row) {
        return billedLabour.get(row);
    }

    /** Returns {@link QuotedLine#billedParts} of a row. */
    public long billedParts(int row) {
        return billedParts.get(row);
    }

    /** Returns {@link QuotedLine#chargeKind} of a row. */
    public ChargeKind chargeKind(int row) {
        return CHARGE_KINDS[chargeKind.get(row)];
    }

    /** Returns {@link QuotedLine#quoteBasis} of a row. */
    public QuoteBasis quoteBasis(int row) {
        return QUOTE_BASISS[quoteBasis.get(row)];
    }

    /** Returns {@link QuotedLine#paidBy} of a row. */
    public PaidBy paidBy(int row) {
        return PAID_BYS[paidBy.get(row)];
    }

    /** Returns {@link QuotedLine#reworkOf} of a row. */
    public int reworkOf(int row) {
        return reworkOf.get(row);
    }

    /** Returns {@link QuotedLine#reworkOfLine} of a row. */
    public int reworkOfLine(int row) {
        return reworkOfLine.get(row);
    }

    /** Returns {@link QuotedLine#returnReason} of a row. */
    public ReturnReason returnReason(int row) {
        return returnReason.get(row) < 0 ? null : RETURN_REASONS[returnReason.get(row)];
    }

    /**
     * Returns where each ticket's lines begin: the lines of ticket {@code t} are {@code starts[t]} up to and without
     * {@code starts[t + 1]}.
     */
    public int[] starts(int tickets) {
        int[] starts = new int[tickets + 1];
        for (int line = 0; line < size(); line++) {
            starts[ticket.get(line) + 1]++;
        }
        for (int t = 0; t < tickets; t++) {
            starts[t + 1] += starts[t];
        }
        return starts;
    }

    /**
     * Returns the hours that a line's actual hours are judged against: of the first accepted quote, else the quote;
     * {@link Absent#AMOUNT} where neither was recorded.
     */
    public long judgedSeconds(int row) {
        return Absent.firstOf(firstQuotedSeconds.get(row), quotedSeconds.get(row));
    }

    /** Takes rows in the order of their keys, until they are built. */
    public static final class Builder {
        private final QuotedLines rows;

        /** Begins without rows. */
        public Builder() {
            this(0);
        }

        /** Begins without rows, with room for so many that are sure to come. */
        public Builder(int room) {
            rows = new QuotedLines(room);
        }

        /** Appends a row and returns this builder. */
        public Builder add(QuotedLine row) {
            rows.ticket.add(row.ticket());
            rows.line.add(row.line());
            rows.repairType.add(row.repairType());
            rows.quotedSeconds.add(row.quotedSeconds());
            rows.quotedLabour.add(row.quotedLabour());
            rows.quotedParts.add(row.quotedParts());
            rows.outcome.add((byte) row.outcome().ordinal());
            rows.quotedOn.add(row.quotedOn());
            rows.firstQuotedSeconds.add(row.firstQuotedSeconds());
            rows.firstQuotedLabour.add(row.firstQuotedLabour());
            rows.billedLabour.add(row.billedLabour());
            rows.billedParts.add(row.billedParts());
            rows.chargeKind.add((byte) row.chargeKind().ordinal());
            rows.quoteBasis.add((byte) row.quoteBasis().ordinal());
            rows.paidBy.add((byte) row.paidBy().ordinal());
            rows.reworkOf.add(row.reworkOf());
            rows.reworkOfLine.add(row.reworkOfLine());
            rows.returnReason.add(
                    (byte) (row.returnReason() == null ? -1 : row.returnReason().ordinal()));
            return this;
        }

        /** Returns the rows as columns. */
        public QuotedLines build() {
            return rows;
        }
    }
}
