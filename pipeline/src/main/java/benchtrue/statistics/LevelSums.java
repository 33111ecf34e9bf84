package benchtrue.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/** For each level of the factor kept aside, the weighted sums of everything else over its rows: a sparse row a level. */
final class LevelSums {
    /** Weighted number of rows of each level. */
    final double[] counts;
    /** The entries of level l are {@code from[l]} to {@code from[l + 1]}, places ascending; the last is the response's. */
    final int[] from;

    int[] places;
    double[] values;

    LevelSums(MixedRows rows) {
        int levels = rows.aside < 0 ? 0 : rows.factors[rows.aside].levels();
        counts = new double[levels];
        from = new int[levels + 1];
        places = new int[levels * rows.places.length];
        values = new double[places.length];
        int[] shifted = IntStream.range(0, rows.shift.length)
                .filter(at -> rows.shift[at] != 0)
                .toArray();
        double[][] sums = sums(rows, levels);
        for (int level = 0; level < levels; level++) {
            from[level + 1] = from[level];
            if (sums[level] != null) {
                centre(sums[level], counts[level], rows.shift, shifted);
                append(level, sums[level]);
            }
        }
    }

    /** Adds the rows up in their own order, which is the one they lie in; a level without rows has no sums. */
    private double[][] sums(MixedRows rows, int levels) {
        double[][] sums = new double[levels][];
        int count = levels == 0 ? 0 : rows.count();
        for (int row = 0; row < count; row++) {
            int level = rows.levelAside(row);
            if (level >= 0) {
                double[] target = sums[level] == null ? new double[rows.size + 1] : sums[level];
                sums[level] = target;
                double weight = rows.weights[row];
                counts[level] += weight;
                int entries = rows.read(row);
                for (int e = 0; e < entries; e++) {
                    target[rows.places[e]] += weight * rows.values[e];
                }
            }
        }
        return sums;
    }

    /** Centres what was read as it is. */
    private static void centre(double[] sums, double count, double[] shift, int[] shifted) {
        for (int at : shifted) {
            sums[at] -= shift[at] * count;
        }
    }

    private void append(int level, double[] sums) {
        int filled = from[level];
        if (filled + sums.length > places.length) {
            places = Arrays.copyOf(places, 2 * (filled + sums.length));
            values = Arrays.copyOf(values, places.length);
        }
        for (int at = 0; at < sums.length; at++) {
            if (sums[at] != 0 || at == sums.length - 1) {
                places[filled] = at;
                values[filled++] = sums[at];
            }
        }
        from[level + 1] = filled;
    }
}
