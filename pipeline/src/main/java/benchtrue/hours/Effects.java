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
    private final SplitData data;
    private final int families;

    Effects(SplitData data, int technicians) {
        this.data = data;
        families = data.cells.families();
        cell = new double[data.cells.size()];
        slope = new double[data.cells.size()];
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
        int ticket = data.facts.ticket[line];
        int group = data.facts.cell[line];
        double first = technician[data.workers.first[line]];
        double second = technician[data.workers.second[line]];
        return cell[group]
                + slope[group] * data.facts.quoteRatio[line]
                + classes[data.traits.classOf[ticket]]
                + writer[data.traits.writerOf[ticket]]
                + traits[data.traits.setOf[ticket] * families + data.cells.family(group)]
                + second
                + data.workers.firstShare[line] * (first - second);
    }

    /** Adds an amount to each of a line's effects. */
    void add(int line, double amount) {
        int ticket = data.facts.ticket[line];
        int group = data.facts.cell[line];
        float share = data.workers.firstShare[line];
        cell[group] += amount;
        slope[group] += amount * data.facts.quoteRatio[line];
        classes[data.traits.classOf[ticket]] += amount;
        writer[data.traits.writerOf[ticket]] += amount;
        traits[data.traits.setOf[ticket] * families + data.cells.family(group)] += amount;
        technician[data.workers.first[line]] += share * amount;
        technician[data.workers.second[line]] += (1 - share) * amount;
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
