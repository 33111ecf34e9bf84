package benchtrue.hours;

import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;

/** Puts every hour on the line it belongs to (methods, sections 1 to 3). */
public final class SplitHours {
    private static final double TOLERANCE = 1e-8;
    private static final double RESAMPLE_TOLERANCE = 1e-5;

    /**
     * Returns every quoted line with its hours.
     *
     * @param ledger what the shop recorded
     * @param settings of the shop
     */
    public JobLines split(Ledger ledger, Settings settings) {
        int[] starts = ledger.lines().starts(ledger.tickets().size());
        BookHours books = new BookHours(ledger);
        Returns returns = Returns.of(ledger, starts);
        Cells cells = new Cells(ledger, books);
        LineFacts facts = new LineFacts(ledger, books, returns, cells, starts);
        TicketLines ticketLines = new TicketLines(ledger, facts);
        PlacedTime placed = new PlaceEntries(ledger, facts, ticketLines, returns).place();
        SplitProblem problem =
                new SplitProblem(facts, ticketLines, placed, ledger.tickets().size());
        LoadFit fit = new MapEm(problem, cells, TOLERANCE).fit();
        if (ShareEntries.any(placed)) {
            new ShareEntries(ledger.time(), facts, ticketLines, placed, fit.factor()).share();
            problem = new SplitProblem(
                    facts, ticketLines, placed, ledger.tickets().size());
            fit = new MapEm(problem, cells, TOLERANCE).fit();
        }
        long[] splitSeconds = SplitTickets.split(facts, placed, fit.factor());
        long[] actualSeconds = splitSeconds.clone();
        for (int line = 0; line < actualSeconds.length; line++) {
            actualSeconds[line] += placed.labelledSeconds[line];
        }
        TraceRework rework = new TraceRework(ledger, facts, returns, placed, actualSeconds);
        rework.trace();
        MapEm resample = new MapEm(problem, cells, RESAMPLE_TOLERANCE);
        return new JobLines(
                ledger,
                DescribeLines.describe(ledger, facts, returns, placed, splitSeconds, rework),
                new ResampledSplit(
                        problem,
                        resample,
                        fit.factor(),
                        books,
                        facts,
                        DescribeLines.judged(facts, placed),
                        rework.reworkSeconds),
                placed.unquoted(),
                new FindInseparable(problem, cells, fit.factor()).find(facts, actualSeconds),
                placed.terms(),
                new EntryPlaces(placed.place, placed.line, placed.sharedSeconds));
    }
}
