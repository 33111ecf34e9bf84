package benchtrue.hours;

import java.util.Arrays;

/** Deals whole seconds out by weight; the parts add up exactly (largest remainder, ties to the earlier place). */
final class Deal {
    private Deal() {}

    /**
     * Returns {@code total} dealt out.
     *
     * @param total seconds, not negative
     * @param weights not negative; equal parts where they sum to zero
     */
    static long[] seconds(long total, double[] weights) {
        int size = weights.length;
        double sum = Arrays.stream(weights).sum();
        long[] parts = new long[size];
        double[] rest = new double[size];
        long left = total;
        for (int i = 0; i < size; i++) {
            double exact = sum > 0 ? total * (weights[i] / sum) : total / (double) size;
            parts[i] = Math.min(left, (long) Math.floor(exact));
            rest[i] = exact - parts[i];
            left -= parts[i];
        }
        while (left > 0) {
            int next = largest(rest);
            parts[next]++;
            rest[next]--;
            left--;
        }
        return parts;
    }

    private static int largest(double[] rest) {
        int place = 0;
        for (int i = 1; i < rest.length; i++) {
            if (rest[i] > rest[place]) {
                place = i;
            }
        }
        return place;
    }
}
