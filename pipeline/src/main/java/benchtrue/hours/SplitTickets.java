package benchtrue.hours;

import benchtrue.shop.Hours;

/** Deals every ticket's time to its lines, open tickets included, conserved to the second. */
final class SplitTickets {
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
            long[] parts = Deal.seconds(placed.wholeSeconds[ticket], weights);
            for (int i = 0; i < parts.length; i++) {
                splitSeconds[from + i] += parts[i];
            }
        }
    }
}
