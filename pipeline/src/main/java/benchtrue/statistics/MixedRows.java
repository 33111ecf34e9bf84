package benchtrue.statistics;

/**
 * The rows of a mixed model, and the place of every unknown in its dense equations.
 *
 * <p>The factor with the most levels is kept aside. The levels of the others come first, one factor after another, then the
 * intercept, then the columns; the response has the place after the last unknown. Columns and response are centred on their
 * weighted means, which keeps digits and leaves their effects as they are.
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

    final double[] weights;
    /** Places that the last row read touches, ascending, with its values there. */
    final int[] places;

    final double[] values;

    private final double[] y;
    private final double[][] columns;

    MixedRows(double[] y, double[][] columns, Factor[] factors, double[] weights) {
        this.y = y;
        this.columns = columns;
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
        for (int j = 0; j <= columns.length; j++) {
            means[j] = mean(j < columns.length ? columns[j] : y);
        }
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

    private double mean(double[] column) {
        double sum = 0;
        double total = 0;
        for (int i = 0; i < column.length; i++) {
            sum += weights[i] * column[i];
            total += weights[i];
        }
        return sum / total;
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
                places[used] = start[f] + factors[f].level()[row];
                values[used++] = 1;
            }
        }
        places[used] = effects;
        values[used++] = 1;
        for (int j = 0; j < columns.length; j++) {
            places[used] = effects + 1 + j;
            values[used++] = columns[j][row] - means[j];
        }
        places[used] = size;
        values[used++] = y[row] - means[columns.length];
        return used;
    }
}
