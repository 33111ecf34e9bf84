package benchtrue.statistics;

import java.util.stream.IntStream;

/**
 * The replicates of a cluster bootstrap: whole groups (tickets) are drawn, so that lines of one ticket stay together (Davison,
 * Hinkley 1997, section 3.8).
 *
 * @param weights how groups are drawn
 * @param seed key of all draws
 * @param resamples number of resamples
 * @param groups number of groups
 */
public record Resampling(GroupWeights weights, long seed, int resamples, int groups) {

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

    private double[] drawn(int resample) {
        double[] counts = new double[groups];
        weights.fill(seed, resample, counts);
        return counts;
    }
}
