package benchtrue.hours;

import java.util.Arrays;

/**
 * Small dense symmetric positive definite matrices. Four rows or columns are worked abreast, each with its own sum in the plain order:
 * one sum alone would wait for the subtraction before it.
 */
final class Symmetric {
    private static final int ABREAST = 4;

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
        double[][] columns = new double[ABREAST][n];
        for (int c = 0; c < n; c += ABREAST) {
            for (int r = c; r < n; r++) {
                inverseRow(lower[r], r, c, columns);
                for (int i = 0; i < ABREAST && c + i <= r; i++) {
                    diagonal[c + i] += columns[i][r] * columns[i][r];
                }
            }
        }
        return diagonal;
    }

    /** Sets row r of four columns of the factor's inverse, from column c on; above its diagonal each is 0. */
    private static void inverseRow(double[] row, int r, int c, double[][] columns) {
        double[] first = columns[0];
        double[] second = columns[1];
        double[] third = columns[2];
        double[] fourth = columns[3];
        double sumOfFirst = r == c ? 1 : 0;
        double sumOfSecond = r == c + 1 ? 1 : 0;
        double sumOfThird = r == c + 2 ? 1 : 0;
        double sumOfFourth = r == c + 3 ? 1 : 0;
        for (int k = c; k < r; k++) {
            double left = row[k];
            sumOfFirst -= left * first[k];
            sumOfSecond -= left * second[k];
            sumOfThird -= left * third[k];
            sumOfFourth -= left * fourth[k];
        }
        first[r] = sumOfFirst / row[r];
        second[r] = sumOfSecond / row[r];
        third[r] = sumOfThird / row[r];
        fourth[r] = sumOfFourth / row[r];
    }

    /** Returns the lower factor. */
    static double[][] factor(double[][] matrix) {
        int n = matrix.length;
        double[][] lower = new double[n][];
        for (int r = 0; r < n; r++) {
            lower[r] = Arrays.copyOf(Arrays.copyOf(matrix[r], r + 1), n);
        }
        for (int c = 0; c < n; c += ABREAST) {
            int end = Math.min(c + ABREAST, n);
            for (int r = c; r < end; r++) {
                factorRow(lower, r, c, r + 1, 0);
            }
            for (int r = end; r < n; r++) {
                subtractBefore(lower, r, c);
                factorRow(lower, r, c, end, c);
            }
        }
        return lower;
    }

    /** Brings columns c to end of row r to the factor's, where the products of columns before {@code from} are taken off. */
    private static void factorRow(double[][] lower, int r, int c, int end, int from) {
        double[] row = lower[r];
        for (int j = c; j < end; j++) {
            double[] other = lower[j];
            double sum = row[j];
            for (int k = from; k < j; k++) {
                sum -= row[k] * other[k];
            }
            row[j] = r == j ? Math.sqrt(sum) : sum / other[j];
        }
    }

    /** Takes the products of the columns before c off four columns of row r, from c on. */
    private static void subtractBefore(double[][] lower, int r, int c) {
        double[] row = lower[r];
        double[] first = lower[c];
        double[] second = lower[c + 1];
        double[] third = lower[c + 2];
        double[] fourth = lower[c + 3];
        double sumOfFirst = row[c];
        double sumOfSecond = row[c + 1];
        double sumOfThird = row[c + 2];
        double sumOfFourth = row[c + 3];
        for (int k = 0; k < c; k++) {
            double left = row[k];
            sumOfFirst -= left * first[k];
            sumOfSecond -= left * second[k];
            sumOfThird -= left * third[k];
            sumOfFourth -= left * fourth[k];
        }
        row[c] = sumOfFirst;
        row[c + 1] = sumOfSecond;
        row[c + 2] = sumOfThird;
        row[c + 3] = sumOfFourth;
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
