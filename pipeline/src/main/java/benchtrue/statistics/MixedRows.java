package benchtrue.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The rows of a mixed model, and the place of every unknown in its dense equations.
 *
 * <p>The factor with the most levels is kept aside. The levels of the others come first, one factor after another, then the
 * intercept, then the columns; the response has the place after the last unknown. Columns and response are centred on their
 * weighted means, which keeps digits and leaves their effects as they are. A column that is 0 in half of the rows or more is read
 * as it is, so that only its other rows cost anything, and its sums are centred instead: its variance is at least its mean's
 * square, so no more than a digit is lost.
 */
final class MixedRows {
    private static final int MOST_DENSE = 8_000;

    final Factor[] factors;
    /** The factor kept aside, or -1 without factors. */
    final int aside;
    /** First place of each factor's levels; -1 for the one kept aside. */
    final int[] start;
    /** Places taken by levels, and the place of the intercept. */
    final int effects;
    /** Number of dense unknowns, and the place of the response. */
    final int size;
    /** Weighted means of the columns, and last of the response. */
    final double[] means;
    /** By place, what its sums are still to be centred by; 0 where values are read centred. */
    final double[] shift;

    final double[] weights;
    /** What stands in the columns as they were given. */
    final Nonzeros nonzeros;
    /** Places that the last row read touches, ascending, with its values there. */
    final int[] places;

    final double[] values;

    private final double[] y;
    private final double[][] columns;
    /** Columns that are read centred, ascending. */
    private final int[] centred;

    MixedRows(double[] y, double[][] columns, Factor[] factors, double[] weights) {
        this(y, columns, new Nonzeros(columns, y.length), factors, weights);
    }

    private MixedRows(double[] y, double[][] columns, Nonzeros nonzeros, Factor[] factors, double[] weights) {
        this.y = y;
        this.columns = columns;
        this.nonzeros = nonzeros;
        this.factors = factors;
        this.weights = weights;
        aside = largest(factors);
        start = new int[factors.length];
        int next = 0;
        for (int f = 0; f < factors.length; f++) {
            start[f] = f == aside ? -1 : next;
            next += f == aside ? 0 : factors[f].levels();
        }
        effects = next;
        size = effects + 1 + columns.length;
        if (size > MOST_DENSE) {
            throw new IllegalArgumentException(
                    size + " unknowns beside the largest factor, more than " + MOST_DENSE + ": leave a factor out");
        }
        places = new int[factors.length + columns.length + 2];
        values = new double[places.length];
        means = new double[columns.length + 1];
        shift = new double[size + 1];
        centre();
        centred = IntStream.range(0, columns.length)
                .filter(j -> shift[effects + 1 + j] == 0)
                .toArray();
    }

    /** Returns the same rows with another response and other weights. */
    MixedRows with(double[] response, double[] rowWeights) {
        return new MixedRows(response, columns, nonzeros, factors, rowWeights);
    }

    /** Sets the means, and the shift of columns that are mostly 0; in one pass over what is not. */
    private void centre() {
        double total = 0;
        double response = 0;
        double[] sums = new double[columns.length];
        double[] notZero = new double[columns.length];
        for (int i = 0; i < y.length; i++) {
            double weight = weights[i];
            total += weight;
            response += weight * y[i];
            for (int at = nonzeros.from[i]; at < nonzeros.from[i + 1]; at++) {
                sums[nonzeros.column[at]] += weight * nonzeros.value[at];
                notZero[nonzeros.column[at]] += weight;
            }
        }
        for (int j = 0; j < columns.length; j++) {
            means[j] = sums[j] / total;
            shift[effects + 1 + j] = total > 0 && 2 * (total - notZero[j]) >= total ? means[j] : 0;
        }
        means[columns.length] = response / total;
    }

    private static int largest(Factor[] factors) {
        int largest = -1;
        for (int f = 0; f < factors.length; f++) {
            if (largest < 0 || factors[f].levels() > factors[largest].levels()) {
                largest = f;
            }
        }
        return largest;
    }

    int count() {
        return y.length;
    }

    /** Returns the row's level of the factor kept aside, or -1. */
    int levelAside(int row) {
        return factors[aside].level()[row];
    }

    /** Reads a row into {@link #places} and {@link #values}; returns how many places it touches. */
    int read(int row) {
        int used = 0;
        for (int f = 0; f < factors.length; f++) {
            if (f != aside && factors[f].level()[row] >= 0) {
                used = set(used, start[f] + factors[f].level()[row], 1);
            }
        }
        used = set(used, effects, 1);
        int next = nonzeros.from[row];
        int end = nonzeros.from[row + 1];
        for (int j : centred) {
            for (; next < end && nonzeros.column[next] < j; next++) {
                used = set(used, effects + 1 + nonzeros.column[next], nonzeros.value[next]);
            }
            next += next < end && nonzeros.column[next] == j ? 1 : 0;
            used = set(used, effects + 1 + j, columns[j][row] - means[j]);
        }
        for (; next < end; next++) {
            used = set(used, effects + 1 + nonzeros.column[next], nonzeros.value[next]);
        }
        return set(used, size, y[row] - means[columns.length]);
    }

    private int set(int used, int place, double value) {
        places[used] = place;
        values[used] = value;
        return used + 1;
    }

    /** The nonzero values of columns, row by row: marks that few rows carry (a trait) cost only those rows. */
    static final class Nonzeros {
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
}
