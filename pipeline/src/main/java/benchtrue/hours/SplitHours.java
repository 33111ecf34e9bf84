package benchtrue.hours;

import benchtrue.hours.JobLines.LineColumns;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;
import benchtrue.shop.Hours;
import benchtrue.statistics.LargestRemainder;

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
        LineColumns columns =
                DescribeLines.describe(ledger, facts, returns, placed, splitSeconds, split.dealt.expectedHours, rework);
        return new JobLines(
                ledger,
                columns,
                new SplitModel(
                        split.data, split.fit, split.dealt.expectedHours, technicians, books, rework.reworkSeconds),
                placed.unquoted(),
                new FindInseparable(split.data, split.fit).find(actualSeconds),
                placed.terms(),
                new EntryPlaces(placed.place, placed.line, placed.sharedSeconds),
                split.basis(columns));
    }

    private record Split(SplitData data, EffectFit fit, SplitTickets dealt) {
        SplitBasis basis(LineColumns columns) {
            int logged = 0;
            int dealtTo = 0;
            for (int line = 0; line < columns.judged().length; line++) {
                boolean known = columns.evidence()[line] == SplitEvidence.LOGGED.ordinal();
                boolean split = columns.evidence()[line] >= SplitEvidence.PARTLY_SPLIT.ordinal();
                logged += columns.judged()[line] && known ? 1 : 0;
                dealtTo += columns.judged()[line] && split ? 1 : 0;
            }
            return new SplitBasis(
                    fit.quoteSlope(), fit.visitHours(), fit.spreads().named(), logged, dealtTo);
        }
    }

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

    /** Deals every ticket's time to its lines, open tickets included, conserved to the second. */
    static final class SplitTickets {
        private final SplitData data;
        private final TicketSplit split;
        private final PlacedTime placed;
        /** By line: expected hours; 0 for lines that take none. */
        final double[] expectedHours;
        /** By line: what was not logged to it: its part of the ticket's time, and of entries by repair type. */
        final long[] splitSeconds;

        SplitTickets(SplitData data, EffectFit fit, int technicians, PlacedTime placed) {
            this.data = data;
            this.placed = placed;
            Effects effects = new Effects(data, technicians);
            fit.layout().write(fit.parameters(), effects);
            split = new TicketSplit(data, data.facts.baseHours, effects, fit.spreads(), fit.visitHours());
            expectedHours = new double[data.role.length];
            splitSeconds = placed.dealtSeconds.clone();
            for (int ticket = 0; ticket < data.wholeHours.length; ticket++) {
                deal(ticket);
            }
        }

        private void deal(int ticket) {
            split.expect(ticket);
            split.split(ticket);
            int from = data.facts.starts[ticket];
            double[] weights = new double[data.facts.starts[ticket + 1] - from];
            for (int i = 0; i < weights.length; i++) {
                boolean takes = data.facts.takesHours[from + i];
                expectedHours[from + i] = data.role[from + i] == SplitData.OUT ? 0 : split.mean[i];
                boolean named = data.role[from + i] == SplitData.KNOWN || data.role[from + i] == SplitData.NAMED;
                double floor = named ? Hours.of(placed.floorSeconds(from + i)) : 0;
                weights[i] = takes ? Math.max(0, split.hours[i] - floor) : 0;
            }
            if (placed.wholeSeconds[ticket] > 0) {
                long[] parts = LargestRemainder.deal(placed.wholeSeconds[ticket], weights);
                for (int i = 0; i < parts.length; i++) {
                    splitSeconds[from + i] += parts[i];
                }
            }
        }
    }
}
