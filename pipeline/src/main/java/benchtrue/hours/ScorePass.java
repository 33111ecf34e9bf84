package benchtrue.hours;

/**
 * One pass over tickets: the quasi-score of the effects (Wedderburn 1974) for ticket sums and known lines with variance in
 * proportion to the square of the mean, residuals bounded (Huber 1964). Not thread-safe.
 */
final class ScorePass {
    private static final double BOUND = 4;
    private final SplitData data;
    private final Spreads spreads;
    private final TicketSplit split;
    private final Effects scores;
    private double visitScore;

    ScorePass(SplitData data, Spreads spreads, TicketSplit split, Effects scores) {
        this.data = data;
        this.spreads = spreads;
        this.split = split;
        this.scores = scores;
    }

    Effects scores() {
        return scores;
    }

    double visitScore() {
        return visitScore;
    }

    void clear() {
        scores.clear();
        visitScore = 0;
    }

    /** Adds a ticket's score; the ticket is left expected and split. */
    void add(int ticket, double weight) {
        split.expect(ticket);
        split.split(ticket);
        int from = data.facts.starts[ticket];
        double spread = StrictMath.sqrt(split.doubt);
        double bare = spread > 0 ? weight * bound((data.wholeHours[ticket] - split.expected) / spread) / spread : 0;
        boolean any = false;
        for (int line = from; line < data.facts.starts[ticket + 1]; line++) {
            double mean = split.mean[line - from];
            switch (data.role[line]) {
                case SplitData.BARE -> {
                    scores.add(line, bare * mean);
                    any = true;
                }
                case SplitData.KNOWN, SplitData.NAMED -> {
                    double doubt = spreads.of(data.facts.cell[line]);
                    double residual = (split.hours[line - from] - mean) / (doubt * mean);
                    scores.add(line, weight * bound(residual) / doubt);
                }
                default -> {}
            }
        }
        visitScore += any ? bare : 0;
    }

    static double bound(double residual) {
        return Math.max(-BOUND, Math.min(BOUND, residual));
    }
}
