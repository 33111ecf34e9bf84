package benchtrue.hours;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Balance;
import benchtrue.shop.LineState;
import java.util.List;

/**
 * Every quoted line with the hours it took. Row numbers are those of {@link Ledger#lines()}.
 *
 * <p>{@code judged} lines are those that verdicts and factors may use: closed, accepted, of a repair type in a book, with a
 * quote, charged as a repair or a package, not on time and not putting earlier work right, on a ticket with bench time: a
 * ticket closed without any was not logged, which is not a job done in no time.
 *
 * @param ledger the lines stand in
 * @param columns what is known of each line
 * @param model splits again under other ticket weights
 * @param unquoted hours on repair types that their ticket never quoted
 * @param inseparable pairs of repair types that can't be told apart
 * @param placed where all seconds of the ledger went: on lines, unquoted, without an accepted line, by kind
 * @param places where each time entry went, so that wages can follow the hours
 * @param basis what the split rests on
 */
public record JobLines(
        Ledger ledger,
        LineColumns columns,
        SplitModel model,
        List<UnquotedWork> unquoted,
        List<InseparablePair> inseparable,
        List<Balance.Term> placed,
        EntryPlaces places,
        SplitBasis basis) {
    private static final LineState[] STATES = LineState.values();
    private static final SplitEvidence[] EVIDENCE = SplitEvidence.values();

    public JobLines {
        unquoted = List.copyOf(unquoted);
        inseparable = List.copyOf(inseparable);
        placed = List.copyOf(placed);
    }

    /** Columns of {@link JobLines}, one value a line; handed over, not shared. */
    record LineColumns(
            byte[] state,
            long[] labelledSeconds,
            long[] splitSeconds,
            long[] reworkSeconds,
            long[] settlingSeconds,
            long[] bookSecondsThen,
            double[] todayQuotedHours,
            int[] mainTechnician,
            boolean[] judged,
            byte[] evidence,
            byte[] marks,
            double[] expectedHours) {}

    public int size() {
        return columns.state().length;
    }

    /** Returns where a line stands. */
    public LineState state(int line) {
        return STATES[columns.state()[line]];
    }

    /** Returns the seconds of entries that name the line. */
    public long labelledSeconds(int line) {
        return columns.labelledSeconds()[line];
    }

    /** Returns the seconds dealt to the line from entries on its ticket as a whole. */
    public long splitSeconds(int line) {
        return columns.splitSeconds()[line];
    }

    /** Returns labelled and split seconds together. */
    public long actualSeconds(int line) {
        return columns.labelledSeconds()[line] + columns.splitSeconds()[line];
    }

    /** Returns, as a memo, the seconds that later lines spent putting this one right for reasons of the shop's own. */
    public long reworkSeconds(int line) {
        return columns.reworkSeconds()[line];
    }

    /** Returns, as a memo, the seconds of free adjustment within the weeks that the line's price promised. */
    public long settlingSeconds(int line) {
        return columns.settlingSeconds()[line];
    }

    /** Returns how surely the line's hours are known. */
    public SplitEvidence evidence(int line) {
        return EVIDENCE[columns.evidence()[line]];
    }

    /** Returns whether a line carries a mark. */
    public boolean marked(int line, LineMark mark) {
        return (columns.marks()[line] & (1 << mark.ordinal())) != 0;
    }

    /** Returns the book's seconds on the day of the quote, or absent for a type without a book entry. */
    public long bookSecondsThen(int line) {
        return columns.bookSecondsThen()[line];
    }

    /** Returns the judged quote against today's book, q x B now / B then, in hours; NaN where there is none. */
    public double todayQuotedHours(int line) {
        return columns.todayQuotedHours()[line];
    }

    /**
     * Returns the hours that the line was to be expected to take by its repair type, the shop's book, quote, instrument and
     * people, before its own hours are looked at; 0 for a line that takes none.
     */
    public double expectedHours(int line) {
        return columns.expectedHours()[line];
    }

    /** Returns the technician with the most seconds on the line, or {@link benchtrue.shop.Absent#INDEX}. */
    public int mainTechnician(int line) {
        return columns.mainTechnician()[line];
    }

    /** Returns whether the line was found on the bench: quoted on a later day than its visit began. */
    public boolean foundLater(int line) {
        return ledger.quotedOn(line) > ledger.opened(line);
    }

    /** Returns whether verdicts and factors may use the line. */
    public boolean judged(int line) {
        return columns.judged()[line];
    }
}
