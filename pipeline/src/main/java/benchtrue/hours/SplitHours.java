package benchtrue.hours;

import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;

/** Puts every hour on the line it belongs to (methods, sections 1 to 3). */
public final class SplitHours {
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
        int technicians = ledger.technicians().size();
        TicketTraits traits = new TicketTraits(ledger);
        Split split = split(ledger, cells, facts, ticketLines, traits, placed);
        if (ShareEntries.any(placed)) {
            new ShareEntries(ledger.time(), facts, ticketLines, placed, split.dealt.expectedHours).share();
            split = split(ledger, cells, facts, ticketLines, traits, placed);
        }
        long[] splitSeconds = split.dealt.splitSeconds;
        long[] actualSeconds = splitSeconds.clone();
        for (int line = 0; line < actualSeconds.length; line++) {
            actualSeconds[line] += placed.labelledSeconds[line];
        }
        TraceRework rework = new TraceRework(ledger, facts, returns, placed, actualSeconds);
        rework.trace();
        return new JobLines(
                ledger,
                DescribeLines.describe(ledger, facts, returns, placed, splitSeconds, rework),
                new ResampledSplit(
                        split.data, split.fit, split.dealt.expectedHours, technicians, books, rework.reworkSeconds),
                placed.unquoted(),
                new FindInseparable(split.data, split.fit).find(actualSeconds),
                placed.terms(),
                new EntryPlaces(placed.place, placed.line, placed.sharedSeconds));
    }

    private record Split(SplitData data, EffectFit fit, SplitTickets dealt) {}

    private static Split split(
            Ledger ledger,
            Cells cells,
            LineFacts facts,
            TicketLines ticketLines,
            TicketTraits traits,
            PlacedTime placed) {
        int technicians = ledger.technicians().size();
        Workers workers = new Workers(ledger.time(), facts, placed, technicians);
        SplitData data = new SplitData(cells, facts, ticketLines, traits, workers, placed);
        EffectFit fit = FitEffects.fit(data, technicians);
        return new Split(data, fit, new SplitTickets(data, fit, technicians, placed));
    }
}
