package benchtrue.hours;

import java.util.Arrays;

/** How the hours of each repair type move with the parameters at the fit, all tickets together. */
final class SplitSlopes {
    private final SplitData data;
    private final Parameters layout;
    private final TicketSplit split;
    private final Effects[] slopes;

    SplitSlopes(SplitData data, Parameters layout, TicketSplit split, int technicians, int types) {
        this.data = data;
        this.layout = layout;
        this.split = split;
        slopes = new Effects[types];
        Arrays.setAll(slopes, type -> new Effects(data, technicians));
    }

    /** Returns hours of a type a unit of each parameter. */
    double[] of(int type) {
        return layout.sum(slopes[type], 0);
    }

    /** Adds how a line's hours move when the expectation of each line of its ticket does; the ticket was just expected. */
    void add(int line, int type) {
        int ticket = data.facts.ticket[line];
        int from = data.facts.starts[ticket];
        double part = split.part(line - from);
        if (part == 0) {
            return;
        }
        double beyond = data.wholeHours[ticket] - split.expected;
        for (int other = from; other < data.facts.starts[ticket + 1]; other++) {
            int i = other - from;
            double itself = other == line ? 1 : 0;
            if (split.taken[i] > 0) {
                double move = split.taken[i] * (itself - part) + 2 * beyond * part * (itself - split.part(i));
                slopes[type].add(other, move);
            }
        }
    }
}
