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
        classes = new double[data.traits.classes.size()];
        writer = new double[data.traits.writers.size()];
        technician = new double[technicians];
        traits = new double[data.traits.sets.size() * families];
    }

    List<double[]> all() {
        return List.of(cell, slope, classes, writer, technician, traits);
    }

    void clear() {
        all().forEach(effects -> Arrays.fill(effects, 0));
    }

    /** Returns the sum of a line's effects. */
    double of(int line) {
        int ticket = data.facts.ticket[line];
        int group = data.facts.cell[line];
        double sum = cell[group] + slope[group] * data.facts.quoteRatio[line];
        sum += at(classes, data.traits.classOf[ticket]) + at(writer, data.traits.writerOf[ticket]);
        sum += traits[data.traits.setOf[ticket] * families + data.cells.family(group)];
        float share = data.workers.firstShare[line];
        return sum
                + share * at(technician, data.workers.first[line])
                + (1 - share) * at(technician, data.workers.second[line]);
    }

    /** Adds an amount to each of a line's effects. */
    void add(int line, double amount) {
        int ticket = data.facts.ticket[line];
        int group = data.facts.cell[line];
        cell[group] += amount;
        slope[group] += amount * data.facts.quoteRatio[line];
        add(classes, data.traits.classOf[ticket], amount);
        add(writer, data.traits.writerOf[ticket], amount);
        traits[data.traits.setOf[ticket] * families + data.cells.family(group)] += amount;
        float share = data.workers.firstShare[line];
        add(technician, data.workers.first[line], share * amount);
        add(technician, data.workers.second[line], (1 - share) * amount);
    }

    private static double at(double[] effects, int level) {
        return level == Levels.NONE ? 0 : effects[level];
    }

    private static void add(double[] effects, int level, double amount) {
        if (level != Levels.NONE) {
            effects[level] += amount;
        }
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
