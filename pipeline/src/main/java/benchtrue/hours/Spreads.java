package benchtrue.hours;

import java.util.Arrays;

/**
 * How much hours scatter around expectation, by cell as a share of it, from lines whose hours are known outright; each cell
 * leans on its family, each family on the shop. Also the labelling habit: how much of what a line with named hours still
 * lacks is to be looked for in the ticket's other time.
 *
 * @param byCell coefficient of variation of each cell
 * @param named from near 0 (a line is named with all its hours or not at all) to 1 (naming says nothing about the rest)
 */
record Spreads(double[] byCell, double named) {
    private static final double GUESS = 0.3;
    private static final double GUESS_LINES = 5;
    private static final double LEAN_LINES = 10;
    private static final double WIDEST_LOG = 2;
    private static final double WIDEST = 1;
    private static final double NAMED_GUESS = 0.3;
    private static final double NAMED_GUESS_WEIGHT = 4;
    private static final double LEAST_NAMED = 0.02;

    static Spreads guess(int cells) {
        double[] byCell = new double[cells];
        Arrays.fill(byCell, GUESS);
        return new Spreads(byCell, NAMED_GUESS);
    }

    double of(int cell) {
        return byCell[cell];
    }

    /** Sums from which spreads are reckoned. */
    static final class Sums {
        private final double[] lines;
        private final double[] logs;
        private final double[] squares;
        private double habit;
        private double habitWeight;

        Sums(int cells) {
            lines = new double[cells];
            logs = new double[cells];
            squares = new double[cells];
        }

        /** Takes a line whose hours are known. */
        void add(int cell, double hours, double expected) {
            if (hours > 0) {
                double log = Math.max(-WIDEST_LOG, Math.min(WIDEST_LOG, StrictMath.log(hours / expected)));
                lines[cell]++;
                logs[cell] += log;
                squares[cell] += log * log;
            }
        }

        /** Takes a ticket with both kinds of line: what the named ones lack, and what the bare ones left over. */
        void addHabit(double lacking, double left, double variance) {
            habit += lacking * left / variance;
            habitWeight += lacking * lacking / variance;
        }

        Spreads spreads(Cells cells) {
            double[] freedom = new double[lines.length];
            double[] familySquares = new double[cells.families()];
            double[] familyFreedom = new double[cells.families()];
            double shopSquares = GUESS_LINES * GUESS * GUESS;
            double shopFreedom = GUESS_LINES;
            for (int cell = 0; cell < lines.length; cell++) {
                freedom[cell] = Math.max(0, lines[cell] - 1);
                squares[cell] -= lines[cell] > 0 ? logs[cell] * logs[cell] / lines[cell] : 0;
                familySquares[cells.family(cell)] += squares[cell];
                familyFreedom[cells.family(cell)] += freedom[cell];
                shopSquares += squares[cell];
                shopFreedom += freedom[cell];
            }
            double shop = shopSquares / shopFreedom;
            double[] spread = new double[lines.length];
            for (int cell = 0; cell < spread.length; cell++) {
                int f = cells.family(cell);
                double family = (familySquares[f] + LEAN_LINES * shop) / (familyFreedom[f] + LEAN_LINES);
                double variance = (squares[cell] + LEAN_LINES * family) / (freedom[cell] + LEAN_LINES);
                spread[cell] = Math.min(WIDEST, StrictMath.sqrt(StrictMath.expm1(variance)));
            }
            double named = (habit + NAMED_GUESS * NAMED_GUESS_WEIGHT) / (habitWeight + NAMED_GUESS_WEIGHT);
            return new Spreads(spread, Math.max(LEAST_NAMED, Math.min(1, named)));
        }
    }
}
