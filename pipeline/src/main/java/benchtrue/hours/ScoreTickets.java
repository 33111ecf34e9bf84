package benchtrue.hours;

import java.util.stream.IntStream;

/**
 * The score of all tickets at some effects. Many tickets are scored in blocks side by side and the blocks added in their order, so
 * that the sums do not depend on how many processors there are.
 */
final class ScoreTickets {
    private static final int BLOCK_TICKETS = 30_000;
    private final SplitData data;
    private final Effects[] scores;
    private final double[] visitScores;

    ScoreTickets(SplitData data, int technicians) {
        this.data = data;
        int blocks = Math.max(1, (data.tickets.length + BLOCK_TICKETS - 1) / BLOCK_TICKETS);
        scores = new Effects[blocks];
        for (int block = 0; block < blocks; block++) {
            scores[block] = new Effects(data, technicians);
        }
        visitScores = new double[blocks];
    }

    void score(Effects effects, Spreads spreads, double visitHours) {
        IntStream.range(0, scores.length).parallel().forEach(block -> score(block, effects, spreads, visitHours));
        for (int block = 1; block < scores.length; block++) {
            scores[0].add(scores[block]);
            visitScores[0] += visitScores[block];
        }
    }

    private void score(int block, Effects effects, Spreads spreads, double visitHours) {
        TicketSplit split = new TicketSplit(data, data.facts.baseHours, effects, spreads, visitHours);
        ScorePass pass = new ScorePass(data, spreads, split, scores[block]);
        pass.clear();
        int end = Math.min((block + 1) * BLOCK_TICKETS, data.tickets.length);
        for (int i = block * BLOCK_TICKETS; i < end; i++) {
            pass.add(data.tickets[i], 1);
        }
        visitScores[block] = pass.visitScore();
    }

    /** Returns the sum over all tickets of the last {@link #score}. */
    Effects scores() {
        return scores[0];
    }

    double visitScore() {
        return visitScores[0];
    }
}
