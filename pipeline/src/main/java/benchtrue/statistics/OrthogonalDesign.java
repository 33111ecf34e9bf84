package benchtrue.statistics;

import java.util.Arrays;

/**
 * X = QR by modified Gram-Schmidt, each column orthogonalised twice (Giraud, Langou 2002: twice is enough), which keeps the
 * digits that normal equations lose. A column that the earlier ones explain up to 1e-9 of its length is aliased and gets no
 * coefficient. O(n p&sup2;).
 */
final class OrthogonalDesign {
    private static final double ALIASED = 1e-9;

    private final double[][] q;
    private final double[][] r;
    private final boolean[] aliased;
    private final int rank;

    /** Takes columns of equal length, without changing them. */
    OrthogonalDesign(double[][] columns) {
        int p = columns.length;
        q = new double[p][];
        r = new double[p][p];
        aliased = new boolean[p];
        int used = 0;
        for (int j = 0; j < p; j++) {
            q[j] = columns[j].clone();
            double length = StrictMath.sqrt(dot(q[j], q[j]));
            project(q[j], j, r[j]);
            project(q[j], j, r[j]);
            r[j][j] = StrictMath.sqrt(dot(q[j], q[j]));
            aliased[j] = !(r[j][j] > ALIASED * length);
            double scale = aliased[j] ? 0 : 1 / r[j][j];
            for (int i = 0; i < q[j].length; i++) {
                q[j][i] *= scale;
            }
            used += aliased[j] ? 0 : 1;
        }
        rank = used;
    }

    int rank() {
        return rank;
    }

    /** Returns the least-squares coefficients, {@code NaN} where aliased, and leaves the residuals in {@code y}. */
    double[] solve(double[] y) {
        double[] b = new double[r.length];
        project(y, r.length, b);
        for (int j = b.length - 1; j >= 0; j--) {
            if (aliased[j]) {
                b[j] = Double.NaN;
                continue;
            }
            for (int k = j + 1; k < b.length; k++) {
                b[j] -= aliased[k] ? 0 : r[k][j] * b[k];
            }
            b[j] /= r[j][j];
        }
        return b;
    }

    /** Returns the diagonal of the inverse of X'X, {@code NaN} where aliased. */
    double[] inverseDiagonal() {
        int p = r.length;
        double[] diagonal = new double[p];
        for (int j = 0; j < p; j++) {
            double[] unit = q[j].clone();
            double[] column = solve(unit);
            for (int i = 0; i < p; i++) {
                diagonal[i] += aliased[j] ? 0 : column[i] * column[i];
            }
        }
        for (int j = 0; j < p; j++) {
            diagonal[j] = aliased[j] ? Double.NaN : diagonal[j];
        }
        return diagonal;
    }

    /** Takes the first {@code count} directions out of {@code v} and adds what was taken to {@code taken}. */
    private void project(double[] v, int count, double[] taken) {
        for (int k = 0; k < count; k++) {
            double along = dot(q[k], v);
            taken[k] += along;
            for (int i = 0; i < v.length; i++) {
                v[i] -= along * q[k][i];
            }
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Returns a column of ones before the others, all of {@code rows} length. */
    static double[][] withIntercept(int rows, double[][] columns) {
        double[][] all = new double[columns.length + 1][];
        all[0] = new double[rows];
        Arrays.fill(all[0], 1);
        for (int j = 0; j < columns.length; j++) {
            if (columns[j].length != rows) {
                throw new IllegalArgumentException(
                        "column " + j + " has " + columns[j].length + " rows, expected " + rows);
            }
            all[j + 1] = columns[j];
        }
        return all;
    }
}
