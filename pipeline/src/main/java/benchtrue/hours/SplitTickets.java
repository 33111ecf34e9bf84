package benchtrue.hours;

import benchtrue.shop.Hours;

/** Deals every ticket's whole seconds to its lines, open tickets included, conserved to the second. */
final class SplitTickets {
    private SplitTickets() {}

    /** Returns by line what was not logged to it: its part of the ticket's time, and of entries by repair type. */
    static long[] split(LineFacts facts, PlacedTime placed, double[] factor) {
        long[] seconds = placed.dealtSeconds.clone();
        for (int ticket = 0; ticket < placed.wholeSeconds.length; ticket++) {
            if (placed.wholeSeconds[ticket] > 0) {
                split(ticket, facts, placed, factor, seconds);
            }
        }
        return seconds;
    }

    private static void split(int ticket, LineFacts facts, PlacedTime placed, double[] factor, long[] seconds) {
        int from = facts.starts[ticket];
        double[] weights = new double[facts.starts[ticket + 1] - from];
        for (int i = 0; i < weights.length; i++) {
            int line = from + i;
            double expected = factor[facts.cell[line]] * facts.baseHours[line];
            double floor = Hours.of(placed.floorSeconds(line));
            weights[i] = facts.takesHours[line] ? MapEm.lacking(expected, floor) : 0;
        }
        long[] parts = Deal.seconds(placed.wholeSeconds[ticket], weights);
        for (int i = 0; i < parts.length; i++) {
            seconds[from + i] += parts[i];
        }
    }
}
