package benchtrue.hours;

/**
 * What each line adds to the score at the fit, kept so that the first step of a resample is one sum.
 */
final class FittedScores {
    private final SplitData data;
    /** By line. */
    private final double[] score;

    /** By ticket. */
    private final double[] visit;

    FittedScores(SplitData data, Spreads spreads, TicketSplit split) {
        this.data = data;
        score = new double[data.role.length];
        visit = new double[data.wholeHours.length];
        ScorePass pass = new ScorePass(data, spreads, split, null);
        for (int ticket : data.tickets) {
            pass.reckon(ticket);
            visit[ticket] = pass.visitOfTicket();
            int from = data.facts.starts[ticket];
            for (int line = from; line < data.facts.starts[ticket + 1]; line++) {
                score[line] = pass.score[line - from];
            }
        }
    }

    /** Adds the scores under ticket weights and returns that of the visit's fixed time. */
    double add(double[] weights, Effects scores) {
        double visitScore = 0;
        for (int ticket : data.tickets) {
            if (weights[ticket] != 0) {
                visitScore += add(ticket, weights[ticket], scores);
            }
        }
        return visitScore;
    }

    /** Adds the scores of one ticket and returns that of its visit's fixed time. */
    double add(int ticket, double weight, Effects scores) {
        for (int line = data.facts.starts[ticket]; line < data.facts.starts[ticket + 1]; line++) {
            if (score[line] != 0) {
                scores.add(line, weight * score[line]);
            }
        }
        return weight * visit[ticket];
    }
}
