package benchtrue.statistics;

import java.util.Arrays;

/**
 * How often each group (ticket) stands in a bootstrap resample. A weight is a function of (seed, resample, group) alone.
 * O(groups) a resample.
 */
public enum GroupWeights {
    /** Independent Poisson(1) counts: the total varies, each group stands alone (Hanley, MacGibbon 2006). */
    POISSON {
        @Override
        public void fill(long seed, int resample, double[] weights) {
            long key = Seed.member(seed, resample);
            for (int group = 0; group < weights.length; group++) {
                weights[group] = poisson(Seed.uniform(key, group));
            }
        }
    },
    /** As many draws with replacement as there are groups: the ordinary bootstrap (Efron 1979). */
    MULTINOMIAL {
        @Override
        public void fill(long seed, int resample, double[] weights) {
            Arrays.fill(weights, 0);
            long key = Seed.member(seed, resample);
            for (int draw = 0; draw < weights.length; draw++) {
                weights[(int) (Seed.uniform(key, draw) * weights.length)]++;
            }
        }
    };

    /** P(count &le; k); the last exceeds every number a seed can give. */
    private static final double[] CUMULATIVE = cumulative();

    /** Overwrites {@code weights} with those of one resample, one a group. */
    public abstract void fill(long seed, int resample, double[] weights);

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
