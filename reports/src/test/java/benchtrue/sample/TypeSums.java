package benchtrue.sample;

/** Sums per repair type; time in seconds. Mutable, filled by {@link TruthBook}. */
final class TypeSums {
    final int[] lines;
    final double[] quoted;
    final double[] expected;
    final double[] expectedRework;
    final double[] logs;
    final long[] logged;
    final long[] rework;
    final long[] unquoted;

    TypeSums(int types) {
        lines = new int[types];
        quoted = new double[types];
        expected = new double[types];
        expectedRework = new double[types];
        logs = new double[types];
        logged = new long[types];
        rework = new long[types];
        unquoted = new long[types];
    }
}
