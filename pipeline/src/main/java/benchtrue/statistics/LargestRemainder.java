package benchtrue.statistics;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * Deals an amount out in proportion to weights so that the parts add up to it exactly: whole shares first, then one each to the
 * largest remainders (Hamilton's method), of equal ones to the earlier.
 */
public final class LargestRemainder {
    private LargestRemainder() {}

    /**
     * Returns one part a weight; of equal remainders the earlier goes first.
     *
     * @param total amount to deal out, of either sign
     * @param weights at least one, not negative; dealt out equally where all are zero
     */
    public static long[] deal(long total, long[] weights) {
        if (weights.length == 0) {
            throw new IllegalArgumentException("nobody to deal " + total + " to");
        }
        if (total < 0) {
            long[] parts = deal(-total, weights);
            for (int i = 0; i < parts.length; i++) {
                parts[i] = -parts[i];
            }
            return parts;
        }
        long sum = 0;
        for (long weight : weights) {
            sum = Math.addExact(sum, weight);
        }
        return sum == 0 ? deal(total, equal(weights.length)) : byRemainder(total, weights, sum);
    }

    private static long[] equal(int size) {
        long[] ones = new long[size];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static long[] byRemainder(long total, long[] weights, long sum) {
        long[] parts = new long[weights.length];
        long[] remainders = new long[weights.length];
        long left = total;
        for (int i = 0; i < weights.length; i++) {
            long product = total * weights[i];
            if (Math.multiplyHigh(total, weights[i]) == product >> 63) {
                parts[i] = product / sum;
                remainders[i] = product % sum;
            } else {
                BigInteger[] share = product(total, weights[i]).divideAndRemainder(BigInteger.valueOf(sum));
                parts[i] = share[0].longValueExact();
                remainders[i] = share[1].longValueExact();
            }
            left -= parts[i];
        }
        for (; left > 0; left--) {
            int largest = largest(remainders);
            parts[largest]++;
            remainders[largest] = -1;
        }
        return parts;
    }

    private static BigInteger product(long total, long weight) {
        return BigInteger.valueOf(total).multiply(BigInteger.valueOf(weight));
    }

    private static int largest(long[] remainders) {
        int largest = 0;
        for (int i = 1; i < remainders.length; i++) {
            if (remainders[i] > remainders[largest]) {
                largest = i;
            }
        }
        return largest;
    }

    /**
     * Returns one part a weight that is a ratio.
     *
     * @param total not negative
     * @param weights not negative; equal parts where they sum to zero
     */
    public static long[] deal(long total, double[] weights) {
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
