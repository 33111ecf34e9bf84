package benchtrue.hours;

import java.util.Arrays;
import java.util.List;

/**
 * One number for each thing that scales a line's hours, on the log scale: its cell, instrument class, quote writer, traits
 * within its family, who worked on it, and the slope of the quote over the book. Also serves to add scores up in.
 */
final class Effects {
    /** Beyond this the series for the exponential is not exact to double precision. */
    private static final double SERIES_REACH = 0.125;

    final double[] cell;
    final double[] slope;
    final double[] classes;
    final double[] writer;
    final double[] technician;
    final double[] traits;
    // Looked up here, not through the data's parts: these two methods are most of what fitting does.
    private final int[] ticketOf;
    private final int[] cellOf;
    private final double[] quoteRatio;
    private final int[] classOf;
    private final int[] writerOf;
    private final int[] setOf;
    private final int[] firstOf;
    private final int[] secondOf;
    private final float[] firstShare;
    private final Cells cells;
    private final int families;

    Effects(SplitData data, int technicians) {
        ticketOf = data.facts.ticket;
        cellOf = data.facts.cell;
        quoteRatio = data.facts.quoteRatio;
        classOf = data.traits.classOf;
        writerOf = data.traits.writerOf;
        setOf = data.traits.setOf;
        firstOf = data.workers.first;
        secondOf = data.workers.second;
        firstShare = data.workers.firstShare;
        cells = data.cells;
        families = cells.families();
        cell = new double[cells.size()];
        slope = new double[cells.size()];
        // The last place of each stands for what was not recorded: no effect, and no test in the inner loops.
        classes = new double[data.traits.classes.size() + 1];
        writer = new double[data.traits.writers.size() + 1];
        technician = new double[technicians + 1];
        traits = new double[data.traits.sets.size() * families];
    }

    List<double[]> all() {
        return List.of(cell, slope, classes, writer, technician, traits);
    }

    void clear() {
        all().forEach(effects -> Arrays.fill(effects, 0));
    }

    /** Adds up with what another has summed. */
    void add(Effects other) {
        for (int kind = 0; kind < all().size(); kind++) {
            double[] sums = all().get(kind);
            double[] more = other.all().get(kind);
            for (int i = 0; i < sums.length; i++) {
                sums[i] += more[i];
            }
        }
    }

    /** Returns the sum of a line's effects. */
    double of(int line) {
        int ticket = ticketOf[line];
        int group = cellOf[line];
        double first = technician[firstOf[line]];
        double second = technician[secondOf[line]];
        return cell[group]
                + slope[group] * quoteRatio[line]
                + classes[classOf[ticket]]
                + writer[writerOf[ticket]]
                + traits[setOf[ticket] * families + cells.family(group)]
                + second
                + firstShare[line] * (first - second);
    }

    /** Adds an amount to each of a line's effects. */
    void add(int line, double amount) {
        int ticket = ticketOf[line];
        int group = cellOf[line];
        float share = firstShare[line];
        cell[group] += amount;
        slope[group] += amount * quoteRatio[line];
        classes[classOf[ticket]] += amount;
        writer[writerOf[ticket]] += amount;
        traits[setOf[ticket] * families + cells.family(group)] += amount;
        technician[firstOf[line]] += share * amount;
        technician[secondOf[line]] += (1 - share) * amount;
    }

    /** Returns the exponential; a short series near 0, where resampling spends its time. */
    static double exp(double x) {
        if (Math.abs(x) > SERIES_REACH) {
            return StrictMath.exp(x);
        }
        double tail = 1 + x * (1 / 6.0 + x * (1 / 42.0 + x * (1 / 336.0 + x / 3_024)));
        return 1 + x * (1 + x * (0.5 + x * (1 / 6.0 + x * (1 / 24.0 + x * (1 / 120.0) * tail))));
    }
}
