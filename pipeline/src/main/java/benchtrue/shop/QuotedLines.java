package benchtrue.shop;

import java.util.Collection;

/**
 * All quoted lines, in the order of ticket then line key, so that a ticket's lines stand together.
 *
 * <p>An accessor with the name of a part of {@link QuotedLine} returns that part of a row.
 */
public final class QuotedLines {
    private final QuotedLine[] rows;

    public QuotedLines(Collection<QuotedLine> rows) {
        this.rows = rows.toArray(QuotedLine[]::new);
    }

    public int size() {
        return rows.length;
    }

    public QuotedLine get(int row) {
        return rows[row];
    }

    public int ticket(int row) {
        return rows[row].ticket();
    }

    public String line(int row) {
        return rows[row].line();
    }

    public int repairType(int row) {
        return rows[row].repairType();
    }

    public long quotedSeconds(int row) {
        return rows[row].quotedSeconds();
    }

    public long quotedLabour(int row) {
        return rows[row].quotedLabour();
    }

    public long quotedParts(int row) {
        return rows[row].quotedParts();
    }

    public Outcome outcome(int row) {
        return rows[row].outcome();
    }

    public int quotedOn(int row) {
        return rows[row].quotedOn();
    }

    public long firstQuotedSeconds(int row) {
        return rows[row].firstQuotedSeconds();
    }

    public long firstQuotedLabour(int row) {
        return rows[row].firstQuotedLabour();
    }

    public long billedLabour(int row) {
        return rows[row].billedLabour();
    }

    public long billedParts(int row) {
        return rows[row].billedParts();
    }

    public ChargeKind chargeKind(int row) {
        return rows[row].chargeKind();
    }

    public QuoteBasis quoteBasis(int row) {
        return rows[row].quoteBasis();
    }

    public PaidBy paidBy(int row) {
        return rows[row].paidBy();
    }

    public int reworkOf(int row) {
        return rows[row].reworkOf();
    }

    public int reworkOfLine(int row) {
        return rows[row].reworkOfLine();
    }

    public ReturnReason returnReason(int row) {
        return rows[row].returnReason();
    }

    /**
     * Returns where each ticket's lines begin: the lines of ticket {@code t} are {@code starts[t]} up to and without
     * {@code starts[t + 1]}.
     */
    public int[] starts(int tickets) {
        int[] starts = new int[tickets + 1];
        for (int line = 0; line < size(); line++) {
            starts[ticket(line) + 1]++;
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
        return Absent.firstOf(firstQuotedSeconds(row), quotedSeconds(row));
    }
}
