package benchtrue.statistics;

/**
 * Count, mean and variance by two passes with a correction (Chan, Golub, LeVeque 1983), sums compensated (Neumaier 1974).
 *
 * @param count number of values
 * @param mean arithmetic mean; {@code NaN} when empty or a value is {@code NaN}
 * @param variance divided by count &minus; 1; {@code NaN} for fewer than two values
 */
public record Moments(int count, double mean, double variance) {

    /** Returns the moments of {@code values}, in any order. */
    public static Moments of(double[] values) {
        int n = values.length;
        double mean = sum(values) / n;
        double[] deviations = new double[n];
        double[] squares = new double[n];
        for (int i = 0; i < n; i++) {
            deviations[i] = values[i] - mean;
            squares[i] = deviations[i] * deviations[i];
        }
        double correction = sum(deviations);
        double about = sum(squares) - correction * correction / n;
        return new Moments(n, mean, n > 1 ? about / (n - 1) : Double.NaN);
    }

    /** Returns the square root of the variance. */
    public double standardDeviation() {
        return StrictMath.sqrt(variance);
    }

    /** Returns the sum in index order with the lost low bits carried along; 0 when empty. */
    public static double sum(double[] values) {
        double sum = 0;
        double lost = 0;
        for (double value : values) {
            double next = sum + value;
            lost += StrictMath.abs(sum) >= StrictMath.abs(value) ? (sum - next) + value : (value - next) + sum;
            sum = next;
        }
        return sum + lost;
    }
}
