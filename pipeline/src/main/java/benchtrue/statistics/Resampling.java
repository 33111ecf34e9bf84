package benchtrue.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The replicates of a cluster bootstrap: whole groups (tickets) are drawn, so that lines of one ticket stay together (Davison,
 * Hinkley 1997, section 3.8). How often each group stands in a resample is an independent Poisson(1) count: the total varies,
 * each group stands alone (Hanley, MacGibbon 2006).
 *
 * @param seed key of all draws
 * @param resamples number of resamples
 * @param groups number of groups
 */
public record Resampling(long seed, int resamples, int groups) {
    /** P(count &le; k); the last exceeds every number a seed can give. */
    private static final double[] CUMULATIVE = cumulative();

    /** What is recomputed for each resample. Called from several threads: must change nothing outside itself. */
    @FunctionalInterface
    public interface Statistic {
        /** Returns the estimates, one a subject (repair type), given each group's weight; {@code NaN} where it has none. */
        double[] of(double[] groupWeights);
    }

    /**
     * Returns the replicates of each subject, {@code [subject][resample]}. Runs on all processors; every resample depends on its
     * number alone and lands in its own place, so that the result has the same bits on any number of threads.
     */
    public double[][] replicates(Statistic statistic) {
        double[][] rows = IntStream.range(0, resamples)
                .parallel()
                .mapToObj(resample -> statistic.of(drawn(resample)))
                .toArray(double[][]::new);
        int subjects = resamples == 0 ? 0 : rows[0].length;
        double[][] columns = new double[subjects][resamples];
        for (int resample = 0; resample < resamples; resample++) {
            for (int subject = 0; subject < subjects; subject++) {
                columns[subject][resample] = rows[resample][subject];
            }
        }
        return columns;
    }

    /** Returns the counts of one resample, a function of (seed, resample, group) alone. */
    double[] drawn(int resample) {
        double[] counts = new double[groups];
        long key = Seed.member(seed, resample);
        Arrays.setAll(counts, group -> poisson(Seed.uniform(key, group)));
        return counts;
    }

    private static int poisson(double uniform) {
        int count = 0;
        while (uniform >= CUMULATIVE[count]) {
            count++;
        }
        return count;
    }

    private static double[] cumulative() {
        double[] below = new double[20];
        double term = StrictMath.exp(-1);
        double sum = 0;
        for (int k = 0; k < below.length; k++) {
            sum += term;
            below[k] = sum;
            term /= k + 1;
        }
        below[below.length - 1] = 1;
        return below;
    }
}
