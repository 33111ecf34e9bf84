package benchtrue.reconcile;

import benchtrue.statistics.Quantile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds where the quotes of a repair changed for good: the split of their order in time whose rank sums lie furthest apart
 * (Wilcoxon 1945, with the variance for ties of Kruskal and Wallis 1952), then each part again.
 */
final class QuoteChanges {
    /** Standard errors that the best of many splits must lie apart. */
    private static final double SURE = 3.5;

    private static final int FEWEST = 3;

    /** A smaller change of the usual quote is none. */
    private static final double LEAST = 0.1;

    private final double[] values;
    private final List<Integer> ends = new ArrayList<>();

    private QuoteChanges(double[] values) {
        this.values = values;
    }

    /** Returns for quotes in order of time the place behind each stretch that has one usual quote; none without quotes. */
    static List<Integer> ends(long[] quotes) {
        QuoteChanges changes =
                new QuoteChanges(Arrays.stream(quotes).asDoubleStream().toArray());
        if (quotes.length > 0) {
            changes.split(0, quotes.length);
        }
        return changes.ends;
    }

    private void split(int from, int to) {
        double[] ranks = ranks(Arrays.copyOfRange(values, from, to));
        double variance = variance(ranks);
        int best = -1;
        double most = SURE;
        double sum = 0;
        int all = to - from;
        for (int before = 1; before <= all - FEWEST; before++) {
            sum += ranks[before - 1];
            double apart = StrictMath.abs(sum - before * (all + 1) / 2.0)
                    / StrictMath.sqrt(before * (all - before) * variance);
            if (before >= FEWEST && apart > most) {
                most = apart;
                best = from + before;
            }
        }
        if (best > 0 && differ(from, best, to)) {
            split(from, best);
            split(best, to);
        } else {
            ends.add(to);
        }
    }

    private boolean differ(int from, int middle, int to) {
        double before = Quantile.median(Quantile.sorted(Arrays.copyOfRange(values, from, middle)));
        double since = Quantile.median(Quantile.sorted(Arrays.copyOfRange(values, middle, to)));
        return StrictMath.abs(since - before) > LEAST * before;
    }

    /** Equal values share the mean of their ranks. */
    private static double[] ranks(double[] values) {
        double[] sorted = Quantile.sorted(values);
        double[] ranks = new double[values.length];
        Map<Double, Double> known = new HashMap<>();
        for (int i = 0; i < sorted.length; ) {
            int end = i;
            while (end < sorted.length && sorted[end] == sorted[i]) {
                end++;
            }
            known.put(sorted[i], (i + 1 + end) / 2.0);
            i = end;
        }
        for (int i = 0; i < values.length; i++) {
            ranks[i] = known.get(values[i]);
        }
        return ranks;
    }

    /** Returns the variance of a rank sum over the product of both sizes: that of the ranks over how many there are. */
    private static double variance(double[] ranks) {
        double mean = (ranks.length + 1) / 2.0;
        double squares = 0;
        for (double rank : ranks) {
            squares += (rank - mean) * (rank - mean);
        }
        return ranks.length < 2 ? 1 : StrictMath.max(squares / (ranks.length - 1) / ranks.length, Double.MIN_NORMAL);
    }
}
