package benchtrue.hours;

import java.util.Arrays;

/** Small dense symmetric positive definite matrices. */
final class Symmetric {
    private Symmetric() {}

    /** Returns the inverse, by Cholesky's factorisation; the argument is left alone. */
    static double[][] inverse(double[][] matrix) {
        int n = matrix.length;
        double[][] lower = factor(matrix);
        double[][] inverse = new double[n][n];
        double[] column = new double[n];
        for (int c = 0; c < n; c++) {
            Arrays.fill(column, 0);
            column[c] = 1;
            solve(lower, column);
            for (int r = 0; r < n; r++) {
                inverse[r][c] = column[r];
            }
        }
        return inverse;
    }

    /** Returns the diagonal of the inverse of a matrix given by its lower factor: the squared columns of the factor's inverse. */
    static double[] inverseDiagonal(double[][] lower) {
        int n = lower.length;
        double[] diagonal = new double[n];
        double[] column = new double[n];
        for (int c = 0; c < n; c++) {
            for (int r = c; r < n; r++) {
                double[] row = lower[r];
                double sum = r == c ? 1 : 0;
                for (int k = c; k < r; k++) {
                    sum -= row[k] * column[k];
                }
                column[r] = sum / row[r];
                diagonal[c] += column[r] * column[r];
            }
        }
        return diagonal;
    }

    /** Returns the lower factor. */
    static double[][] factor(double[][] matrix) {
        int n = matrix.length;
        double[][] lower = new double[n][n];
        for (int r = 0; r < n; r++) {
            for (int c = 0; c <= r; c++) {
                double sum = matrix[r][c];
                for (int k = 0; k < c; k++) {
                    sum -= lower[r][k] * lower[c][k];
                }
                lower[r][c] = r == c ? Math.sqrt(sum) : sum / lower[c][c];
            }
        }
        return lower;
    }

    /** Replaces {@code right} by the solution for a matrix given by its lower factor. */
    static void solve(double[][] lower, double[] right) {
        int n = lower.length;
        for (int r = 0; r < n; r++) {
            double[] row = lower[r];
            double sum = right[r];
            for (int k = 0; k < r; k++) {
                sum -= row[k] * right[k];
            }
            right[r] = sum / row[r];
        }
        for (int r = n - 1; r >= 0; r--) {
            double[] row = lower[r];
            double solved = right[r] / row[r];
            right[r] = solved;
            for (int k = 0; k < r; k++) {
                right[k] -= row[k] * solved;
            }
        }
    }
}
