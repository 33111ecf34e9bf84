package benchtrue.statistics;

/**
 * Counter-based random numbers: each is a function of its key alone, so that the order of computing, and the number of threads,
 * can't change it. The mixer is that of SplittableRandom (Steele, Lea, Flood 2014, with Stafford's variant 13).
 */
public final class Seed {
    private static final long GOLDEN = 0x9e3779b97f4a7c15L;
    private static final long PRIME = 0x100000001b3L;
    private static final double UNIT = 0x1p-53;

    private Seed() {}

    /** Returns a seed keyed by the settings' seed, the method's name and the subject (a repair type's code, or empty). */
    public static long of(long seed, String method, String subject) {
        long hash = mix(seed);
        for (String part : new String[] {method, subject}) {
            for (int i = 0; i < part.length(); i++) {
                hash = (hash ^ part.charAt(i)) * PRIME;
            }
            hash = mix(hash);
        }
        return hash;
    }

    /** Returns the seed of one member of a series, such as one resample. */
    public static long member(long seed, long index) {
        return mix(seed + GOLDEN * (index + 1));
    }

    /** Returns the number in [0, 1), a multiple of 2^-53, that stands at {@code index} of the seed's sequence. */
    public static double uniform(long seed, long index) {
        return (member(seed, index) >>> 11) * UNIT;
    }

    private static long mix(long state) {
        long z = (state ^ (state >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return z ^ (z >>> 31);
    }
}
