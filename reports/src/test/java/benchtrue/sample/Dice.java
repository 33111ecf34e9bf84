package benchtrue.sample;

/**
 * A seeded stream of random numbers that gives the same bits on every JDK: SplitMix64 (Steele, Lea, Flood 2014, "Fast
 * splittable pseudorandom number generators"), normals by the polar method (Marsaglia, Bray 1964) in {@link StrictMath}.
 *
 * <p>A stream is keyed by the shop's seed, what it is for and the ticket, so that no draw depends on the order of work.
 */
final class Dice {
    private static final long GAMMA = 0x9E3779B97F4A7C15L;

    private long state;

    Dice(long seed, Stream stream, long key) {
        state = mix(mix(mix(seed + GAMMA) + stream.ordinal() + 1) + key);
    }

    /** What a stream of random numbers is for. */
    enum Stream {
        SHOP,
        VISIT,
        WORK,
        BACK,
        PARTS,
        MONTH
    }

    private static long mix(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** Returns a number from 0 up to, but not including, 1. */
    double uniform() {
        state += GAMMA;
        return (mix(state) >>> 11) * 0x1.0p-53;
    }

    /** Returns a whole number from 0 to {@code bound - 1}. */
    int below(int bound) {
        return (int) (uniform() * bound);
    }

    boolean chance(double probability) {
        return uniform() < probability;
    }

    /** Returns a standard normal deviate. */
    double normal() {
        double x;
        double square;
        do {
            x = 2 * uniform() - 1;
            double y = 2 * uniform() - 1;
            square = x * x + y * y;
        } while (square >= 1 || square == 0);
        return x * StrictMath.sqrt(-2 * StrictMath.log(square) / square);
    }

    double exponential(double mean) {
        return -mean * StrictMath.log(1 - uniform());
    }

    /** Returns an index drawn by weights that were summed up from the left. */
    int pick(double[] cumulative) {
        double at = uniform() * cumulative[cumulative.length - 1];
        int index = 0;
        while (cumulative[index] <= at) {
            index++;
        }
        return index;
    }

    /** Returns the sums from the left that {@link #pick} wants. */
    static double[] cumulative(double... weights) {
        double[] sums = weights.clone();
        for (int i = 1; i < sums.length; i++) {
            sums[i] += sums[i - 1];
        }
        return sums;
    }

    /** Rounds to a multiple of {@code grid}, up or down by lot, so that the mean stays what it was. */
    long toGrid(double value, long grid) {
        return (long) StrictMath.floor(value / grid + uniform()) * grid;
    }
}
