package benchtrue.statistics;

/**
 * Elimination on the upper triangle of a symmetric positive matrix, S = U'U. Rows are worked from the diagonal on, in an order that does
 * not depend on anything but the size. O(m&sup3;/3).
 */
final class Cholesky {
    private Cholesky() {}

    /** Replaces the first {@code pivots} rows by those of U, and the rest of the triangle by its Schur complement. */
    static void eliminate(double[][] s, int pivots) {
        int n = s.length;
        for (int k = 0; k < pivots; k++) {
            double[] top = s[k];
            double root = StrictMath.sqrt(top[k]);
            for (int j = k; j < n; j++) {
                top[j] /= root;
            }
            for (int i = k + 1; i < n; i++) {
                if (top[i] != 0) {
                    subtract(s[i], top[i], top, i);
                }
            }
        }
    }

    private static void subtract(double[] row, double factor, double[] other, int from) {
        for (int j = from; j < row.length; j++) {
            row[j] -= factor * other[j];
        }
    }

    /** Returns x with Ux = c for the leading m rows of U, c being U's column m. */
    static double[] backSolve(double[][] u, int m) {
        double[] x = new double[m];
        for (int i = m - 1; i >= 0; i--) {
            double sum = u[i][m];
            for (int j = i + 1; j < m; j++) {
                sum -= u[i][j] * x[j];
            }
            x[i] = sum / u[i][i];
        }
        return x;
    }

    /** Returns the inverse of U'U for the leading m rows of U, both triangles. O(m&sup3;). */
    static double[][] inverse(double[][] u, int m) {
        double[][] columns = inverseColumns(u, m);
        double[][] inverse = new double[m][m];
        for (double[] column : columns) {
            for (int i = 0; i < column.length; i++) {
                if (column[i] != 0) {
                    add(inverse[i], column[i], column, i);
                }
            }
        }
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < i; j++) {
                inverse[i][j] = inverse[j][i];
            }
        }
        return inverse;
    }

    /** The columns of the inverse of U, each down to its diagonal. */
    private static double[][] inverseColumns(double[][] u, int m) {
        double[][] rows = new double[m][m];
        for (int i = m - 1; i >= 0; i--) {
            rows[i][i] = 1 / u[i][i];
            for (int k = i + 1; k < m; k++) {
                if (u[i][k] != 0) {
                    subtract(rows[i], u[i][k] / u[i][i], rows[k], k);
                }
            }
        }
        double[][] columns = new double[m][];
        for (int k = 0; k < m; k++) {
            columns[k] = new double[k + 1];
            for (int i = 0; i <= k; i++) {
                columns[k][i] = rows[i][k];
            }
        }
        return columns;
    }

    private static void add(double[] row, double factor, double[] column, int from) {
        for (int j = from; j < column.length; j++) {
            row[j] += factor * column[j];
        }
    }
}
