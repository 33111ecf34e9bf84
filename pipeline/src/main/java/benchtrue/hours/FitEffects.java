package benchtrue.hours;

import benchtrue.hours.Parameters.Block;
import java.util.Arrays;

/**
 * Fits what scales hours, jointly from known lines and ticket sums: a log-linear model of each line's expected hours with
 * random effects, by penalised quasi-likelihood (Breslow, Clayton 1993) and Fisher scoring, the scatter of each block of
 * effects re-estimated each round (Schall 1991).
 *
 * <p>Beyond some size the information and the scatters are taken from every n-th ticket; the estimates always from all.
 */
final class FitEffects {
    private static final int MOST_ROUNDS = 40;
    private static final int MOST_POLISHES = 60;
    private static final double ROUND_TOLERANCE = 1e-3;
    private static final double POLISH_TOLERANCE = 1e-7;
    private static final int ENOUGH_TICKETS = 30_000;
    private static final double LARGEST_STEP = 0.5;
    private static final double SCATTER_GUESS = 0.1;
    private static final double LEAST_SCATTER = 0.003;
    private final SplitData data;
    private final int technicians;
    private final Parameters layout;
    private final int stride;
    private double[] parameters;
    private Spreads spreads;
    private double[][] lower;
    private double[][] ofTickets;
    private double visitScore;
    private double damping = 1;
    private double[] lastMove;

    private FitEffects(SplitData data, int technicians) {
        this.data = data;
        this.technicians = technicians;
        layout = new Parameters(data, technicians);
        stride = Math.max(1, data.tickets.length / ENOUGH_TICKETS);
        parameters = layout.centre.clone();
        lastMove = new double[layout.size];
        spreads = Spreads.guess(data.cells.size());
    }

    static EffectFit fit(SplitData data, int technicians) {
        FitEffects fit = new FitEffects(data, technicians);
        fit.parameters[fit.layout.shop] = fit.overall();
        fit.rounds();
        if (fit.visitShows()) {
            fit.layout.letVisitIn();
            fit.rounds();
        }
        fit.polish();
        return new EffectFit(fit.parameters, fit.layout, fit.spreads, fit.lower, fit.ofTickets);
    }

    /** Returns the log of all hours over all base hours. */
    private double overall() {
        double hours = 0;
        double base = 0;
        for (int ticket : data.tickets) {
            hours += data.wholeHours[ticket];
            for (int line = data.facts.starts[ticket]; line < data.facts.starts[ticket + 1]; line++) {
                if (data.role[line] != SplitData.OUT && data.role[line] != SplitData.IDLE) {
                    base += data.facts.baseHours[line];
                    hours += data.role[line] == SplitData.BARE ? 0 : data.ownHours[line];
                }
            }
        }
        return base > 0 && hours > 0 ? StrictMath.log(hours / base) : 0;
    }

    private void rounds() {
        double change = Double.MAX_VALUE;
        for (int round = 0; round < MOST_ROUNDS && change > ROUND_TOLERANCE; round++) {
            change = round(round);
        }
    }

    private double round(int round) {
        Effects effects = new Effects(data, technicians);
        layout.write(parameters, effects);
        TicketSplit split = new TicketSplit(data, data.facts.baseHours, effects, spreads, parameters[layout.visit]);
        ScorePass pass = new ScorePass(data, spreads, split, new Effects(data, technicians));
        Information information = new Information(data, layout, spreads, split);
        SpreadSums sums = new SpreadSums(data, spreads);
        for (int i = 0; i < data.tickets.length; i += stride) {
            pass.add(data.tickets[i], stride);
            information.add(data.tickets[i]);
            sums.add(data.tickets[i], split);
        }
        visitScore = pass.visitScore();
        ofTickets = information.ofTickets(stride);
        lower = Symmetric.factor(leaning(ofTickets));
        double change = step(layout.score(pass.scores(), visitScore, parameters));
        scatter(Symmetric.inverseDiagonal(lower));
        if (round > 0) {
            spreads = sums.spreads();
        }
        return change;
    }

    private double[][] leaning(double[][] information) {
        double[][] leaning = new double[information.length][];
        for (int i = 0; i < leaning.length; i++) {
            leaning[i] = information[i].clone();
            leaning[i][i] += layout.precision[i];
        }
        return leaning;
    }

    /**
     * Steps towards a score of zero, shortened as a whole where some parameter would leap or where steps go to and fro;
     * returns the largest move asked for.
     */
    private double step(double[] score) {
        Symmetric.solve(lower, score);
        double longest = 0;
        double along = 0;
        for (int i = 0; i < score.length; i++) {
            longest = Math.max(longest, Math.abs(score[i]));
            along += score[i] * lastMove[i];
        }
        damping = along < 0 ? damping / 2 : Math.min(1, 1.5 * damping);
        double scale = Math.min(damping, LARGEST_STEP / longest);
        for (int i = 0; i < score.length; i++) {
            parameters[i] += scale * score[i];
        }
        lastMove = score;
        parameters[layout.visit] = layout.visitIsIn() ? Math.max(0, parameters[layout.visit]) : 0;
        return longest;
    }

    /** Re-estimates how far each block of effects scatters, and how strongly its effects therefore lean on zero. */
    private void scatter(double[] inverseDiagonal) {
        for (Block block : Block.values()) {
            int from = layout.begin[block.ordinal()];
            int end = layout.begin[block.ordinal() + 1];
            int to = block == Block.TYPE ? from + data.cells.types() : end;
            double squares = SCATTER_GUESS * SCATTER_GUESS;
            double freedom = 1;
            for (int i = from; i < to; i++) {
                squares += parameters[i] * parameters[i];
                freedom += 1 - layout.precision[i] * inverseDiagonal[i];
            }
            double variance = Math.max(LEAST_SCATTER * LEAST_SCATTER, Math.min(1, squares / freedom));
            Arrays.fill(layout.precision, from, to, 1 / variance);
        }
    }

    /** Whether a visit's fixed time shows: the score test against the Bayesian information criterion (Schwarz 1978). */
    private boolean visitShows() {
        double[] with = new double[layout.size];
        for (int i = 0; i < with.length; i++) {
            with[i] = i == layout.visit ? 0 : ofTickets[layout.visit][i];
        }
        double[] solved = with.clone();
        Symmetric.solve(lower, solved);
        double information = ofTickets[layout.visit][layout.visit];
        for (int i = 0; i < with.length; i++) {
            information -= with[i] * solved[i];
        }
        return visitScore > 0
                && information > 0
                && visitScore * visitScore / information > StrictMath.log(data.tickets.length);
    }

    /** Brings the estimates to where the score of all tickets is zero, by the information at hand. */
    private void polish() {
        lower = Symmetric.factor(leaning(ofTickets));
        double change = Double.MAX_VALUE;
        Effects effects = new Effects(data, technicians);
        ScoreTickets all = new ScoreTickets(data, technicians);
        for (int round = 0; round < MOST_POLISHES && change > POLISH_TOLERANCE; round++) {
            layout.write(parameters, effects);
            all.score(effects, spreads, parameters[layout.visit]);
            change = step(layout.score(all.scores(), all.visitScore(), parameters));
        }
    }
}
