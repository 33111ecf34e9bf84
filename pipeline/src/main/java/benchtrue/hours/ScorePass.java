package benchtrue.hours;

/**
 * The quasi-score of the effects (Wedderburn 1974) for ticket sums and known lines with variance in proportion to the square
 * of the mean, residuals bounded (Huber 1964); one ticket at a time. Not thread-safe.
 */
final class ScorePass {
    private static final double BOUND = 4;
    private final SplitData data;
    private final Spreads spreads;
    private final TicketSplit split;
    private final Effects scores;
    /** By place within the ticket: score of the line. */
    final double[] score;

    private double visitOfTicket;
    private double visitScore;

    ScorePass(SplitData data, Spreads spreads, TicketSplit split, Effects scores) {
        this.data = data;
        this.spreads = spreads;
        this.split = split;
        this.scores = scores;
        score = new double[data.mostLines];
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

    /** Reckons a ticket's score without adding it; the ticket is left expected and split. */
    void reckon(int ticket) {
        split.expect(ticket);
        split.split(ticket);
        int from = data.facts.starts[ticket];
        double spread = StrictMath.sqrt(split.doubt);
        double bare = spread > 0 ? bound((data.wholeHours[ticket] - split.expected) / spread) / spread : 0;
        visitOfTicket = 0;
        for (int line = from; line < data.facts.starts[ticket + 1]; line++) {
            int i = line - from;
            byte role = data.role[line];
            score[i] = 0;
            if (role == SplitData.BARE) {
                score[i] = bare * split.mean[i];
                visitOfTicket = bare;
            } else if (role == SplitData.KNOWN || role == SplitData.NAMED) {
                double doubt = spreads.of(data.facts.cell[line]);
                score[i] = bound((split.hours[i] - split.mean[i]) / (doubt * split.mean[i])) / doubt;
            }
        }
    }

    /** Returns the score of the visit's fixed time, after {@link #reckon}. */
    double visitOfTicket() {
        return visitOfTicket;
    }

    /** Adds a ticket's score; the ticket is left expected and split. */
    void add(int ticket, double weight) {
        reckon(ticket);
        int from = data.facts.starts[ticket];
        for (int line = from; line < data.facts.starts[ticket + 1]; line++) {
            if (score[line - from] != 0) {
                scores.add(line, weight * score[line - from]);
            }
        }
        visitScore += weight * visitOfTicket;
    }

    private static double bound(double residual) {
        return Math.max(-BOUND, Math.min(BOUND, residual));
    }
}
