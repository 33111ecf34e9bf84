package benchtrue.statistics;

import java.util.Arrays;

/**
 * Control of the false-discovery rate by the step-up rule of Benjamini and Hochberg (1995, JRSS B 57, 289-300).
 *
 * <p>Adjusted p of rank i is the least over ranks k &ge; i of p(k) m/k; a hypothesis is rejected at rate q when its adjusted p is
 * at most q. Ties share a value. {@code NaN} (not testable) stays {@code NaN} and does not count in m. Empty in, empty out; one p
 * stays as it is. Output in input order. O(m log m).
 */
public final class BenjaminiHochberg {
    private BenjaminiHochberg() {}

    /**
     * Returns the adjusted p-values.
     *
     * @throws IllegalArgumentException if a p-value lies outside 0 to 1
     */
    public static double[] adjust(double[] p) {
        double[] tested =
                Arrays.stream(p).filter(v -> !Double.isNaN(v)).sorted().toArray();
        int m = tested.length;
        double[] adjusted = new double[m];
        double least = 1;
        for (int i = m - 1; i >= 0; i--) {
            if (!(tested[i] >= 0 && tested[i] <= 1)) {
                throw new IllegalArgumentException("a p-value must lie in 0 to 1, found " + tested[i]);
            }
            least = StrictMath.min(least, tested[i] * m / (i + 1));
            adjusted[i] = least;
        }
        return Arrays.stream(p)
                .map(v -> Double.isNaN(v) ? v : adjusted[Arrays.binarySearch(tested, v)])
                .toArray();
    }
}
