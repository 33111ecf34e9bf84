package benchtrue.hours;

/** Sums over tickets from which {@link Spreads} are reckoned. Not thread-safe. */
final class SpreadSums {
    private static final double GUESS_LINES = 5;
    private static final double LEAN_LINES = 10;
    private static final double WIDEST_LOG = 2;
    private static final double WIDEST = 1;
    private static final double NAMED_GUESS_WEIGHT = 4;
    private static final double LEAST_NAMED = 0.02;
    private final SplitData data;
    private final Spreads before;
    private final double[] lines;
    private final double[] logs;
    private final double[] squares;
    private double habit;
    private double habitWeight;

    /** Takes the spreads that doubts are reckoned with meanwhile. */
    SpreadSums(SplitData data, Spreads before) {
        this.data = data;
        this.before = before;
        lines = new double[data.cells.size()];
        logs = new double[lines.length];
        squares = new double[lines.length];
    }

    /** Adds a ticket that was just expected and split. */
    void add(int ticket, TicketSplit split) {
        int from = data.facts.starts[ticket];
        double lacking = 0;
        double bare = 0;
        double variance = 0;
        int bareLines = 0;
        int last = 0;
        for (int line = from; line < data.facts.starts[ticket + 1]; line++) {
            int i = line - from;
            double doubt = before.of(data.facts.cell[line]) * split.mean[i];
            if (data.role[line] == SplitData.KNOWN) {
                addKnown(data.facts.cell[line], split.hours[i], split.mean[i]);
            } else if (data.role[line] == SplitData.BARE) {
                bareLines++;
                last = line;
                bare += split.mean[i];
                variance += doubt * doubt;
            } else if (data.role[line] == SplitData.NAMED) {
                lacking += split.lacking(line, i, doubt);
                variance += doubt * doubt;
            }
        }
        if (lacking > 0 && bare > 0) {
            habit += lacking * (data.wholeHours[ticket] - bare) / variance;
            habitWeight += lacking * lacking / variance;
        } else if (lacking == 0 && bareLines == 1) {
            addKnown(data.facts.cell[last], data.wholeHours[ticket], split.expected);
        }
    }

    private void addKnown(int cell, double hours, double expected) {
        double log = Math.max(-WIDEST_LOG, Math.min(WIDEST_LOG, StrictMath.log(hours / expected)));
        lines[cell]++;
        logs[cell] += log;
        squares[cell] += log * log;
    }

    Spreads spreads() {
        Cells cells = data.cells;
        double[] own = new double[lines.length];
        double[] freedom = new double[lines.length];
        double[] familySquares = new double[cells.families()];
        double[] familyFreedom = new double[cells.families()];
        double shopSquares = GUESS_LINES * Spreads.GUESS * Spreads.GUESS;
        double shopFreedom = GUESS_LINES;
        for (int cell = 0; cell < lines.length; cell++) {
            freedom[cell] = Math.max(0, lines[cell] - 1);
            own[cell] = lines[cell] > 0 ? squares[cell] - logs[cell] * logs[cell] / lines[cell] : 0;
            familySquares[cells.family(cell)] += own[cell];
            familyFreedom[cells.family(cell)] += freedom[cell];
            shopSquares += own[cell];
            shopFreedom += freedom[cell];
        }
        double[] spread = new double[lines.length];
        for (int cell = 0; cell < spread.length; cell++) {
            int f = cells.family(cell);
            double family = leaning(familySquares[f], familyFreedom[f], shopSquares / shopFreedom);
            double variance = leaning(own[cell], freedom[cell], family);
            spread[cell] = Math.min(WIDEST, StrictMath.sqrt(StrictMath.expm1(variance)));
        }
        double named = (habit + Spreads.NAMED_GUESS * NAMED_GUESS_WEIGHT) / (habitWeight + NAMED_GUESS_WEIGHT);
        return new Spreads(spread, Math.max(LEAST_NAMED, Math.min(1, named)));
    }

    private static double leaning(double squares, double freedom, double on) {
        return (squares + LEAN_LINES * on) / (freedom + LEAN_LINES);
    }
}
