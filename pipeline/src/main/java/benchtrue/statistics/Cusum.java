package benchtrue.statistics;

/**
 * Tabular cumulative sum chart, its upper side (Page 1954; NIST/SEMATECH e-Handbook 6.3.2.3): S(t) = max(0, S(t&minus;1) + x(t) &minus; target
 * &minus; k). k is in the unit of the values. {@code NaN} is no observation. O(n).
 */
public final class Cusum {
    private Cusum() {}

    /** Returns the sum after each value; k, half the shift worth finding, is {@code slack}. */
    static double[] sums(double[] values, double target, double slack) {
        double[] sums = new double[values.length];
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum = Double.isNaN(values[i]) ? sum : StrictMath.max(0, sum + values[i] - target - slack);
            sums[i] = sum;
        }
        return sums;
    }

    /** Returns where the run of the sum that holds {@code index} began: the point after the sum was last 0. */
    public static int startOfRise(double[] values, double target, double slack, int index) {
        double[] sums = sums(values, target, slack);
        int start = index;
        while (start > 0 && sums[start - 1] > 0) {
            start--;
        }
        return start;
    }
}
