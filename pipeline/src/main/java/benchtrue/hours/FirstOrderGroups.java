package benchtrue.hours;

import java.util.Arrays;
import java.util.function.UnaryOperator;

/**
 * Groups of tickets summed up at the fit: hours and quotes of each group by repair type, and how far one more of the group
 * moves the hours of each repair type elsewhere, through the parameters. What is left out is of second order in a resample's
 * scatter. Safe for parallel callers.
 */
final class FirstOrderGroups implements UnaryOperator<double[]> {
    /** By group, then type. */
    private final double[][] hours;

    private final double[][] quoted;
    private final double[][] moves;
    private final int types;
    private final double[] allQuoted;

    /** Takes sums by group, then type; arrays are handed over. */
    FirstOrderGroups(double[][] hours, double[][] quoted, double[][] moves, int types) {
        this.hours = hours;
        this.quoted = quoted;
        this.moves = moves;
        this.types = types;
        double[] ones = new double[hours.length];
        Arrays.fill(ones, 1);
        allQuoted = sum(ones, 0, quoted);
    }

    @Override
    public double[] apply(double[] groupWeights) {
        double[] loads = sum(groupWeights, 0, hours);
        double[] base = sum(groupWeights, 0, quoted);
        double[] moved = sum(groupWeights, 1, moves);
        for (int type = 0; type < types; type++) {
            double bulk = base[type] / allQuoted[type];
            loads[type] = base[type] > 0 ? Math.max(0, loads[type] + bulk * moved[type]) / base[type] : Double.NaN;
        }
        return loads;
    }

    private double[] sum(double[] weights, double less, double[][] rows) {
        double[] sum = new double[types];
        for (int group = 0; group < rows.length; group++) {
            if (weights[group] != less) {
                add(weights[group] - less, rows[group], sum);
            }
        }
        return sum;
    }

    private static void add(double weight, double[] row, double[] sum) {
        for (int type = 0; type < sum.length; type++) {
            sum[type] += weight * row[type];
        }
    }
}
