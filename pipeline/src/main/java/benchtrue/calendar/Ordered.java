package benchtrue.calendar;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Visits in the order of one of their figures, so that those nearest to a value stand together. */
record Ordered(int[] places, double[] figures) {
    private static final int LIKE_IT = 60;

    static Ordered by(double[] figure) {
        int[] order = IntStream.range(0, figure.length)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> figure[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        return new Ordered(
                order, IntStream.of(order).mapToDouble(i -> figure[i]).toArray());
    }

    int[] nearest(double value) {
        int from = Arrays.binarySearch(figures, value);
        from = from < 0 ? -from - 1 : from;
        int to = from;
        while (to - from < LIKE_IT && to - from < places.length) {
            boolean down = to == places.length || from > 0 && value - figures[from - 1] <= figures[to] - value;
            from -= down ? 1 : 0;
            to += down ? 0 : 1;
        }
        return Arrays.copyOfRange(places, from, to);
    }
}
