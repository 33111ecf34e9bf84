package benchtrue.hours;

/**
 * Splits one ticket at a time (methods, section 1): a line's hours have mean m and variance (s m) squared, so that of what a
 * ticket took beyond expectation each line bears its part of the variance. Scratch of one worker; not thread-safe.
 */
final class TicketSplit {
    /** A line never gets less than this part of its proportional share: no job is done in no time. */
    private static final double LEAST_PART = 0.1;
    /** Of a line with named hours, at least this many spreads of its expectation may still be unnamed. */
    private static final double LEAST_SPREADS = 0.5;

    private static final double VISIT_SPREAD = 0.5;
    private final SplitData data;
    private final double[] baseHours;
    private final Effects effects;
    private final Spreads spreads;
    private final double visitHours;
    /** By place within the ticket: expected hours of the line. */
    final double[] mean;
    /** By place within the ticket: expected hours out of the ticket's time to split. */
    final double[] taken;
    /** By place within the ticket: all hours of the line. */
    final double[] hours;

    private final double[] variance;
    /** Expected hours to split of the whole ticket, and their variance. */
    double expected;

    double doubt;

    TicketSplit(SplitData data, double[] baseHours, Effects effects, Spreads spreads, double visitHours) {
        this.data = data;
        this.baseHours = baseHours;
        this.effects = effects;
        this.spreads = spreads;
        this.visitHours = visitHours;
        int most = data.mostLines;
        mean = new double[most];
        taken = new double[most];
        hours = new double[most];
        variance = new double[most];
    }

    /** Reckons what is expected of a ticket. */
    void expect(int ticket) {
        int from = data.facts.starts[ticket];
        expected = visitHours;
        doubt = VISIT_SPREAD * VISIT_SPREAD * visitHours * visitHours;
        for (int line = from; line < data.facts.starts[ticket + 1]; line++) {
            int i = line - from;
            taken[i] = 0;
            variance[i] = 0;
            if (data.role[line] == SplitData.OUT) {
                continue;
            }
            mean[i] = baseHours[line] * Effects.exp(effects.of(line));
            double spread = spreads.of(data.facts.cell[line]) * mean[i];
            if (data.role[line] == SplitData.BARE) {
                taken[i] = mean[i];
                variance[i] = spread * spread;
            } else if (data.role[line] == SplitData.NAMED) {
                taken[i] = spreads.named() * lacking(line, i, spread);
                variance[i] = spreads.named() * spreads.named() * spread * spread;
            }
            expected += taken[i];
            doubt += variance[i];
        }
    }

    /** Returns the hours a line with named ones lacks of its expectation, were its other hours never named. */
    double lacking(int line, int place, double spreadHours) {
        return Math.max(mean[place] - data.ownHours[line], LEAST_SPREADS * spreadHours);
    }

    /** Returns which part of what a ticket took beyond expectation a line bears, by its place. */
    double part(int place) {
        return doubt > 0 ? variance[place] / doubt : 0;
    }

    /** Deals a ticket's time after {@link #expect}; hours of each line are then known. */
    void split(int ticket) {
        int from = data.facts.starts[ticket];
        int to = data.facts.starts[ticket + 1];
        double whole = data.wholeHours[ticket];
        double beyond = doubt > 0 ? (whole - expected) / doubt : 0;
        double least = LEAST_PART * whole / expected;
        double sum = 0;
        for (int i = 0; i < to - from; i++) {
            hours[i] = taken[i] > 0 ? Math.max(taken[i] + variance[i] * beyond, least * taken[i]) : 0;
            sum += hours[i];
        }
        for (int i = 0; i < to - from; i++) {
            double own = data.role[from + i] == SplitData.OUT ? 0 : data.ownHours[from + i];
            hours[i] = own + (sum > 0 ? hours[i] * (whole / sum) : 0);
        }
    }
}
