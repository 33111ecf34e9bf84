package benchtrue.statistics;

import java.util.Arrays;

/** The nonzero values of columns, row by row: marks that few rows carry (a trait) cost only those rows. */
final class Nonzeros {
    /** The entries of row i are {@code from[i]} to {@code from[i + 1]}, columns ascending. */
    final int[] from;

    final int[] column;
    final double[] value;

    Nonzeros(double[][] columns, int rows) {
        from = new int[rows + 1];
        for (double[] values : columns) {
            for (int i = 0; i < rows; i++) {
                from[i + 1] += values[i] != 0 ? 1 : 0;
            }
        }
        for (int i = 0; i < rows; i++) {
            from[i + 1] += from[i];
        }
        column = new int[from[rows]];
        value = new double[from[rows]];
        int[] next = Arrays.copyOf(from, rows);
        for (int j = 0; j < columns.length; j++) {
            for (int i = 0; i < rows; i++) {
                if (columns[j][i] != 0) {
                    column[next[i]] = j;
                    value[next[i]++] = columns[j][i];
                }
            }
        }
    }
}
