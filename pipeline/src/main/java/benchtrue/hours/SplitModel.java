package benchtrue.hours;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Ints;
import java.util.Arrays;
import java.util.function.UnaryOperator;

/**
 * Splits unlabelled hours again under other ticket weights, so that intervals carry the split's own doubt: begun at the plain
 * fit and stepped by its information; what the effects lean on stays as it was. Safe for parallel callers.
 */
public final class SplitModel {
    /** Two leave an error of a fortieth of a resample's scatter: measured on sampled shops of 1,200 tickets. */
    private static final int MOST_STEPS = 2;

    private static final double TOLERANCE = 2e-3;
    /** Longer moves than those of a resample take a few steps more. */
    private static final int MOST_STEPS_AGAIN = 12;

    private final SplitData data;
    private final EffectFit fit;
    private final double[] fittedHours;
    private final int technicians;
    private final boolean[] inBook;
    private final int[] failedLine;
    private final double[] failedHours;
    private final FittedScores fitted;
    /** What is left of the score at the fit. */
    private final double[] restScore;

    /**
     * Takes what was fitted.
     *
     * @param fittedHours expected hours of each line
     * @param reworkSeconds of each line
     */
    SplitModel(
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
        fitted = new FittedScores(data, fit.spreads(), split(fit.parameters(), new Effects(data, technicians)));
        double[] ones = new double[tickets()];
        Arrays.fill(ones, 1);
        Effects scores = new Effects(data, technicians);
        double visitScore = fitted.add(ones, scores);
        restScore = fit.layout().score(scores, visitScore, fit.parameters());
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

    /** Returns how many tickets, or groups of tickets, there are; weights have this length. */
    public int tickets() {
        return data.wholeHours.length;
    }

    /**
     * Fits the split with each ticket counted as often as its weight says. Safe for parallel callers; the same weights give
     * the same bits on any number of threads.
     *
     * @param ticketWeights weight of each ticket by index, not negative; 1 for the plain fit
     * @return load factor of each repair type by code, rework included, over closed accepted judged lines against
     *     today's book; NaN where no weighted line has the type
     */
    public double[] loads(double[] ticketWeights) {
        if (ticketWeights.length != tickets()) {
            throw new IllegalArgumentException(
                    "weights of " + ticketWeights.length + " tickets for " + tickets() + " tickets");
        }
        Effects effects = new Effects(data, technicians);
        Effects scores = new Effects(data, technicians);
        double[] parameters = fit.parameters().clone();
        double visitScore = fitted.add(ticketWeights, scores);
        double change = step(scores, visitScore, parameters);
        for (int step = 1; step < MOST_STEPS && change > TOLERANCE; step++) {
            change = step(ticketWeights, fittedHours, effects, scores, parameters);
        }
        return loads(ticketWeights, split(parameters, effects));
    }

    /** Steps to where the scores of tickets lead; returns the longest move. */
    private double step(double[] weights, double[] base, Effects effects, Effects scores, double[] parameters) {
        ScorePass pass = new ScorePass(data, fit.spreads(), split(base, parameters, effects), scores);
        pass.clear();
        for (int ticket : data.tickets) {
            if (weights[ticket] != 0) {
                pass.add(ticket, weights[ticket]);
            }
        }
        return step(scores, pass.visitScore(), parameters);
    }

    /**
     * Returns the split as it is once some lines are known to take longer than others of their repair; what is expected of all
     * others is fitted again.
     *
     * @param times by line, hours over those of a line of which nothing of the kind is known
     */
    public SplitAgain again(double[] times) {
        double[] base = fittedHours.clone();
        Arrays.setAll(base, line -> base[line] * times[line]);
        Effects effects = new Effects(data, technicians);
        Effects scores = new Effects(data, technicians);
        double[] ones = new double[tickets()];
        Arrays.fill(ones, 1);
        double[] parameters = fit.parameters().clone();
        double change = 1;
        for (int step = 0; step < MOST_STEPS_AGAIN && change > TOLERANCE; step++) {
            change = step(ones, base, effects, scores, parameters);
        }
        return SplitAgain.of(data, split(base, parameters, effects));
    }

    /**
     * Returns, for each repair type by code, the variance of ln(load factor) that comes from what the split leans on and
     * that no resample shows, since a resample leans on the same; 0 where every hour names its line.
     */
    public double[] leaningVariance() {
        TicketSplit split = split(fit.parameters(), new Effects(data, technicians));
        return new ShrinkageVariance(data, fit, split, technicians, inBook.length).of(rework());
    }

    /**
     * Returns {@link #loads} as a function of weights of groups of tickets, every ticket of a group counted alike, to first order:
     * at a cost that does not grow with tickets times resamples. Safe for parallel callers.
     *
     * @param groupOfTicket group of each ticket, from 0
     * @param groups how many groups
     */
    public UnaryOperator<double[]> firstOrder(int[] groupOfTicket, int groups) {
        TicketSplit split = split(fit.parameters(), new Effects(data, technicians));
        return new SumTickets(data, fit, fitted, split, technicians, rework(), inBook).sum(groupOfTicket, groups);
    }

    /** Returns by line the hours that put it right. */
    private double[] rework() {
        double[] rework = new double[data.role.length];
        for (int i = 0; i < failedLine.length; i++) {
            rework[failedLine[i]] = failedHours[i];
        }
        return rework;
    }

    /** Effects are moves away from the fit, whose expected hours stand in for the base. */
    private TicketSplit split(double[] parameters, Effects effects) {
        return split(fittedHours, parameters, effects);
    }

    private TicketSplit split(double[] base, double[] parameters, Effects effects) {
        double[] moved = parameters.clone();
        for (int i = 0; i < moved.length; i++) {
            moved[i] -= fit.parameters()[i];
        }
        fit.layout().write(moved, effects);
        return new TicketSplit(data, base, effects, fit.spreads(), parameters[fit.layout().visit]);
    }

    /** Steps by the information at the fit; returns the longest move. */
    private double step(Effects scores, double visitScore, double[] parameters) {
        double[] score = fit.layout().score(scores, visitScore, parameters);
        for (int i = 0; i < score.length; i++) {
            score[i] -= restScore[i];
        }
        Symmetric.solve(fit.lower(), score);
        double change = 0;
        for (int i = 0; i < score.length; i++) {
            change = Math.max(change, Math.abs(score[i]));
            parameters[i] += score[i];
        }
        int visit = fit.layout().visit;
        parameters[visit] = fit.layout().visitIsIn() ? Math.max(0, parameters[visit]) : 0;
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
