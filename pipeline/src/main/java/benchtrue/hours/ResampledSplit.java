package benchtrue.hours;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Ints;
import java.util.Arrays;

/**
 * The split done again under other ticket weights, begun at the plain fit and stepped by its information; what the effects
 * lean on stays as it was. Safe for parallel callers.
 */
final class ResampledSplit implements SplitModel {
    private static final int MOST_STEPS = 4;
    private static final double TOLERANCE = 2e-3;
    private static final double SMALL_MOVE = 0.02;
    private static final int ENOUGH_TICKETS = 2_000;
    private static final int RARE_LINES = 100;
    private final SplitData data;
    private final EffectFit fit;
    private final double[] fittedHours;
    private final int technicians;
    private final boolean[] inBook;
    private final int[] failedLine;
    private final double[] failedHours;

    /**
     * Takes what was fitted.
     *
     * @param fittedHours expected hours of each line
     * @param reworkSeconds of each line
     */
    ResampledSplit(
            SplitData data,
            EffectFit fit,
            double[] fittedHours,
            int technicians,
            BookHours books,
            long[] reworkSeconds) {
        this.data = data;
        this.fit = fit;
        this.fittedHours = fittedHours;
        this.technicians = technicians;
        inBook = new boolean[books.types()];
        for (int type = 0; type < inBook.length; type++) {
            inBook[type] = Absent.has(books.secondsToday(type));
        }
        Ints failed = new Ints();
        for (int line = 0; line < reworkSeconds.length; line++) {
            if (data.judged[line] && reworkSeconds[line] > 0) {
                failed.add(line);
            }
        }
        failedLine = failed.toArray();
        failedHours = Arrays.stream(failedLine)
                .mapToDouble(l -> Hours.of(reworkSeconds[l]))
                .toArray();
    }

    @Override
    public int tickets() {
        return data.wholeHours.length;
    }

    @Override
    public double[] loads(double[] ticketWeights) {
        if (ticketWeights.length != tickets()) {
            throw new IllegalArgumentException(
                    "weights of " + ticketWeights.length + " tickets for " + tickets() + " tickets");
        }
        double[] parameters = fit.parameters().clone();
        double[] moved = new double[parameters.length];
        Effects effects = new Effects(data, technicians);
        Effects scores = new Effects(data, technicians);
        double change = Double.MAX_VALUE;
        for (int step = 0; step < MOST_STEPS && change > TOLERANCE; step++) {
            TicketSplit split = split(parameters, moved, effects);
            ScorePass pass = new ScorePass(data, fit.spreads(), split, scores);
            pass.clear();
            for (int ticket : data.tickets) {
                if (ticketWeights[ticket] != 0) {
                    pass.add(ticket, ticketWeights[ticket]);
                }
            }
            change = step(fit.layout().score(scores, pass.visitScore(), parameters), parameters, moved);
        }
        return loads(ticketWeights, split(parameters, moved, effects));
    }

    /**
     * With the tickets' information I, the precision P of what parameters lean on and the gradient g of ln(load), the
     * posterior variance g' (I + P)^-1 g exceeds the sampling variance by g' (I + P)^-1 P (I + P)^-1 g.
     */
    @Override
    public double[] leaningVariance() {
        double[][] gradient = gradient();
        double[] variance = new double[inBook.length];
        for (int type = 0; type < variance.length; type++) {
            double[] direction = gradient[type];
            Symmetric.solve(fit.lower(), direction);
            for (int i = 0; i < direction.length; i++) {
                variance[type] += fit.layout().precision[i] * direction[i] * direction[i];
            }
        }
        return variance;
    }

    /** Returns the gradient of each type's ln(load) in the parameters of the types, their families and the shop. */
    private double[][] gradient() {
        Parameters layout = fit.layout();
        double[] some = someTickets();
        double[][] gradient = new double[inBook.length][layout.size];
        double[] at = loads(some, split(fit.parameters(), new double[layout.size], new Effects(data, technicians)));
        for (int moving = 0; moving < inBook.length; moving++) {
            double[] moved = new double[layout.size];
            int parameter = layout.of(Parameters.Block.TYPE, moving);
            moved[parameter] = SMALL_MOVE;
            double[] loads = loads(some, split(fit.parameters(), moved, new Effects(data, technicians)));
            for (int type = 0; type < loads.length; type++) {
                double slope = loads[type] > 0 ? StrictMath.log(loads[type] / at[type]) / SMALL_MOVE : 0;
                gradient[type][parameter] = slope;
                gradient[type][layout.of(Parameters.Block.FAMILY, data.cells.family(moving))] += slope;
                gradient[type][layout.shop] += slope;
            }
        }
        return gradient;
    }

    /** Every n-th ticket of a large shop is enough for slopes, and every one with a repair type that is rare. */
    private double[] someTickets() {
        int[] lines = new int[data.cells.size()];
        for (int line = 0; line < data.judged.length; line++) {
            lines[data.facts.cell[line]]++;
        }
        int stride = Math.max(1, data.tickets.length / ENOUGH_TICKETS);
        double[] weights = new double[tickets()];
        for (int line = 0; line < data.judged.length; line++) {
            int ticket = data.facts.ticket[line];
            weights[ticket] = ticket % stride == 0 || lines[data.facts.cell[line]] < RARE_LINES ? 1 : weights[ticket];
        }
        return weights;
    }

    /** Effects are kept as moves away from the fit, whose expected hours stand in for the base. */
    private TicketSplit split(double[] parameters, double[] moved, Effects effects) {
        fit.layout().write(moved, effects);
        return new TicketSplit(data, fittedHours, effects, fit.spreads(), parameters[fit.layout().visit]);
    }

    private double step(double[] score, double[] parameters, double[] moved) {
        Symmetric.solve(fit.lower(), score);
        double change = 0;
        for (int i = 0; i < score.length; i++) {
            double next = i == fit.layout().visit ? Math.max(0, parameters[i] + score[i]) : parameters[i] + score[i];
            change = Math.max(change, Math.abs(score[i]));
            moved[i] += next - parameters[i];
            parameters[i] = next;
        }
        return change;
    }

    private double[] loads(double[] weights, TicketSplit split) {
        double[] hours = new double[inBook.length];
        double[] quoted = new double[inBook.length];
        for (int ticket : data.tickets) {
            if (weights[ticket] == 0) {
                continue;
            }
            split.expect(ticket);
            split.split(ticket);
            int from = data.facts.starts[ticket];
            for (int line = from; line < data.facts.starts[ticket + 1]; line++) {
                if (data.judged[line]) {
                    hours[data.facts.cell[line]] += weights[ticket] * split.hours[line - from];
                    quoted[data.facts.cell[line]] += weights[ticket] * data.facts.todayHours[line];
                }
            }
        }
        for (int i = 0; i < failedLine.length; i++) {
            int line = failedLine[i];
            hours[data.facts.cell[line]] += weights[data.facts.ticket[line]] * failedHours[i];
        }
        for (int type = 0; type < hours.length; type++) {
            hours[type] = inBook[type] && quoted[type] > 0 ? hours[type] / quoted[type] : Double.NaN;
        }
        return hours;
    }
}
