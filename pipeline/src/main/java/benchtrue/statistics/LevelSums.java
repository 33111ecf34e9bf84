package benchtrue.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/** For each level of the factor kept aside, the weighted sums of everything else over its rows: a sparse row a level. */
final class LevelSums {
    /** Weighted number of rows of each level. */
    final double[] counts;
    /** The entries of level l are {@code from[l]} to {@code from[l + 1]}, places ascending. */
    final int[] from;

    int[] places;
    double[] values;

    private final double[] sums;
    private final int[] seen;
    private final int[] touched;
    private final double[] shift;
    private final int[] shifted;

    LevelSums(MixedRows rows) {
        int levels = rows.aside < 0 ? 0 : rows.factors[rows.aside].levels();
        counts = new double[levels];
        from = new int[levels + 1];
        places = new int[levels * rows.places.length];
        shift = rows.shift;
        shifted = IntStream.range(0, shift.length).filter(at -> shift[at] != 0).toArray();
        values = new double[places.length];
        sums = new double[rows.size + 1];
        touched = new int[rows.size + 1];
        seen = new int[rows.size + 1];
        Arrays.fill(seen, -1);
        int[] firstRow = new int[levels + 1];
        int[] order = rowsByLevel(rows, firstRow);
        for (int level = 0; level < levels; level++) {
            int used = 0;
            for (int k = firstRow[level]; k < firstRow[level + 1]; k++) {
                used = add(rows, order[k], level, used);
            }
            append(level, used);
        }
    }

    private int add(MixedRows rows, int row, int level, int already) {
        int used = already;
        double weight = rows.weights[row];
        counts[level] += weight;
        int entries = rows.read(row);
        for (int e = 0; e < entries; e++) {
            int at = rows.places[e];
            if (seen[at] != level) {
                seen[at] = level;
                touched[used++] = at;
                sums[at] = 0;
            }
            sums[at] += weight * rows.values[e];
        }
        return used;
    }

    private void append(int level, int touchedByRows) {
        int used = touchedByRows == 0 ? 0 : centre(level, touchedByRows);
        Arrays.sort(touched, 0, used);
        int filled = from[level];
        if (filled + used > places.length) {
            places = Arrays.copyOf(places, 2 * (filled + used));
            values = Arrays.copyOf(values, places.length);
        }
        for (int t = 0; t < used; t++) {
            places[filled + t] = touched[t];
            values[filled + t] = sums[touched[t]];
        }
        from[level + 1] = filled + used;
    }

    /** Centres what was read as it is, where no row touched it too. */
    private int centre(int level, int already) {
        int used = already;
        for (int at : shifted) {
            if (seen[at] != level) {
                seen[at] = level;
                touched[used++] = at;
                sums[at] = 0;
            }
            sums[at] -= shift[at] * counts[level];
        }
        return used;
    }

    /** Returns the rows that have a level, by level and then in their own order; fills in where each level's rows begin. */
    private static int[] rowsByLevel(MixedRows rows, int[] firstRow) {
        int levels = firstRow.length - 1;
        int count = levels == 0 ? 0 : rows.count();
        for (int i = 0; i < count; i++) {
            int level = rows.levelAside(i);
            if (level >= 0) {
                firstRow[level + 1]++;
            }
        }
        for (int level = 0; level < levels; level++) {
            firstRow[level + 1] += firstRow[level];
        }
        int[] next = Arrays.copyOf(firstRow, levels);
        int[] order = new int[firstRow[levels]];
        for (int i = 0; i < count; i++) {
            int level = rows.levelAside(i);
            if (level >= 0) {
                order[next[level]++] = i;
            }
        }
        return order;
    }
}
