package benchtrue.statistics;

import java.util.Comparator;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The log-rank comparison (Peto, Peto 1972): each thing scores 1 once it has ended, less the sum of the shares that ended at each
 * time while it lasted (Nelson 1972); groups whose scores differ end sooner or later. What has not ended is censored. O(n log n).
 */
public final class LogRank {
    private LogRank() {}

    /**
     * Returns the scores; they sum to 0.
     *
     * @param times how long each lasted
     * @param ended whether it has ended
     */
    public static double[] scores(double[] times, boolean[] ended) {
        int[] order = IntStream.range(0, times.length)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> times[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] scores = new double[times.length];
        double hazard = 0;
        int next = 0;
        for (int i = 0; i < order.length; i = next) {
            int events = 0;
            for (next = i; next < order.length && times[order[next]] == times[order[i]]; next++) {
                events += ended[order[next]] ? 1 : 0;
            }
            hazard += events / (double) (order.length - i);
            for (int k = i; k < next; k++) {
                scores[order[k]] = (ended[order[k]] ? 1 : 0) - hazard;
            }
        }
        return scores;
    }

    /**
     * Returns the two-sided chance that two groups differ as much in their mean (Student 1908); {@code NaN} with fewer than two
     * of one or without scatter.
     *
     * @param in whether each belongs to the first
     */
    public static double chance(double[] values, boolean[] in) {
        Moments first = of(values, i -> in[i]);
        Moments other = of(values, i -> !in[i]);
        int freedom = values.length - 2;
        double squares = (first.count() - 1) * first.variance() + (other.count() - 1) * other.variance();
        double error = StrictMath.sqrt(squares / freedom * (1.0 / first.count() + 1.0 / other.count()));
        return 2 * StudentT.upperTail(StrictMath.abs(first.mean() - other.mean()) / error, freedom);
    }

    private static Moments of(double[] values, IntPredicate which) {
        return Moments.of(IntStream.range(0, values.length)
                .filter(which)
                .mapToDouble(i -> values[i])
                .toArray());
    }
}
