package benchtrue.findings;

import benchtrue.statistics.StudentT;
import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Jobs with a circumstance held against jobs without it, repair by repair, on the scale of ln(hours).
 *
 * <p>A repair's contrast says something of its own only as far as other repairs do not show the same: what they show, first those
 * of its family, is its expectation, which itself is expected near nothing (empirical Bayes, Efron 2010). Spreads lean on those
 * of the repair, and these on the shop's, so that few jobs that happen to be alike are not taken for sure ones.
 */
final class Contrasts {
    /** Standard deviations of ln that a circumstance is expected to make in the shop, in a family beside it, in a repair beside that. */
    private static final double SHOP = 0.08;

    private static final double FAMILY = 0.06;
    private static final double TRIFLE = 0.04;
    private static final int LENT_JOBS = 15;
    private static final int FEWEST_ELSEWHERE = 3;
    private static final int CELLS = 4;
    private final int[] familyOfType;
    private final double[] lent;
    private final int[] with;
    private final int[] without;
    private final double[] size;
    private final double[] variance;
    private final double[] freedom;
    private final double[] ownScore;
    private final double[] familyWeight;
    private final double[] familySum;
    private double shopWeight;
    private double shopSum;

    /**
     * Takes the jobs.
     *
     * @param value ln of each job's hours over what is expected of it but for the circumstance
     * @param holds by line, whether the job has it
     * @param lent by repair type, variance of such values
     */
    Contrasts(CauseRows rows, double[] value, IntPredicate holds, double[] lent) {
        familyOfType = rows.familyOfType();
        this.lent = lent;
        int types = familyOfType.length;
        with = new int[types];
        without = new int[types];
        size = new double[types];
        variance = new double[types];
        freedom = new double[types];
        ownScore = new double[types];
        familyWeight = new double[rows.families()];
        familySum = new double[rows.families()];
        Sums sums = new Sums(rows, value, holds);
        for (int k = 0; k < types; k++) {
            contrast(k, sums);
        }
    }

    /** Sums of four cells a repair type: jobs with hours of their own (0, 1) and split ones (2, 3), without and with. */
    private static final class Sums {
        private final int[] count;
        private final double[] weight;
        private final double[] mean;
        private final double[] squares;

        private Sums(CauseRows rows, double[] value, IntPredicate holds) {
            int cells = CELLS * rows.familyOfType().length;
            double[] weights = rows.weight();
            int[] cellOf = new int[value.length];
            count = new int[cells];
            weight = new double[cells];
            mean = new double[cells];
            squares = new double[cells];
            for (int i = 0; i < cellOf.length; i++) {
                int cell = CELLS * rows.type()[i] + (i < rows.own() ? 0 : 2) + (holds.test(rows.line()[i]) ? 1 : 0);
                cellOf[i] = cell;
                count[cell]++;
                weight[cell] += weights[i];
                mean[cell] += weights[i] * value[i];
            }
            Arrays.setAll(mean, cell -> mean[cell] / weight[cell]);
            for (int i = 0; i < cellOf.length; i++) {
                double off = value[i] - mean[cellOf[i]];
                squares[cellOf[i]] += weights[i] * off * off;
            }
        }

        /** Variance of one job of weight 1 with or without, leaning on what is lent. */
        private double spread(int first, double lent) {
            int jobs = Math.max(0, count[first] - 1) + Math.max(0, count[first + 2] - 1);
            return (squares[first] + squares[first + 2] + LENT_JOBS * lent) / (jobs + LENT_JOBS);
        }
    }

    private void contrast(int k, Sums sums) {
        int first = CELLS * k;
        with[k] = sums.count[first + 1];
        without[k] = sums.count[first];
        double spreadWith = sums.spread(first + 1, lent[k]);
        double spreadWithout = sums.spread(first, lent[k]);
        double precision = 0;
        double sum = 0;
        for (int cell = first; cell < first + CELLS; cell += 2) {
            boolean both = sums.count[cell] > 0 && sums.count[cell + 1] > 0;
            double own = both ? 1 / (spreadWith / sums.weight[cell + 1] + spreadWithout / sums.weight[cell]) : 0;
            double difference = both ? sums.mean[cell + 1] - sums.mean[cell] : 0;
            precision += own;
            sum += own * difference;
            ownScore[k] = cell == first ? difference * StrictMath.sqrt(own) : ownScore[k];
        }
        size[k] = sum / precision;
        variance[k] = 1 / precision;
        freedom[k] = LENT_JOBS + sums.count[first + 1] + sums.count[first + 3] - 1.0;
        if (counted(k)) {
            familyWeight[familyOfType[k]] += weight(k);
            familySum[familyOfType[k]] += weight(k) * size[k];
            shopWeight += weight(k);
            shopSum += weight(k) * size[k];
        }
    }

    private boolean counted(int k) {
        return with[k] >= FEWEST_ELSEWHERE && without[k] >= FEWEST_ELSEWHERE;
    }

    private double weight(int k) {
        return 1 / (variance[k] + TRIFLE * TRIFLE);
    }

    /** Returns how many errors apart the jobs with hours of their own alone are. */
    double ownScore(int type) {
        return ownScore[type];
    }

    int with(int type) {
        return with[type];
    }

    int without(int type) {
        return without[type];
    }

    /** Returns ln(hours with it over hours without it), as the repair's own jobs have it. */
    double size(int type) {
        return size[type];
    }

    double freedom(int type) {
        return freedom[type];
    }

    /** What is to be expected of a repair type by the others. */
    private record Elsewhere(double mean, double variance) {}

    private Elsewhere elsewhere(int type) {
        int family = familyOfType[type];
        boolean counted = counted(type);
        double own = counted ? weight(type) : 0;
        double inFamily = StrictMath.max(0, familyWeight[family] - own);
        double familyMean = inFamily > 0 ? (familySum[family] - (counted ? own * size[type] : 0)) / inFamily : 0;
        double outside = StrictMath.max(0, shopWeight - familyWeight[family]);
        double shop = outside + 1 / (SHOP * SHOP);
        double shopMean = (shopSum - familySum[family]) / shop;
        double prior = 1 / (1 / shop + FAMILY * FAMILY);
        double precision = inFamily + prior;
        return new Elsewhere((inFamily * familyMean + prior * shopMean) / precision, 1 / precision);
    }

    /** Returns how many errors the repair stands away from what is to be expected of it. */
    double score(int type) {
        Elsewhere elsewhere = elsewhere(type);
        return (size[type] - elsewhere.mean) / StrictMath.sqrt(variance(elsewhere, type));
    }

    private double variance(Elsewhere elsewhere, int type) {
        return variance[type] + elsewhere.variance + TRIFLE * TRIFLE;
    }

    /** Returns the two-sided chance of a score. */
    double chance(int type, double score) {
        return 2 * StudentT.upperTail(StrictMath.abs(score), freedom[type]);
    }

    /** Returns the standard error of a contrast beyond what is to be expected of it. */
    double error(int type) {
        return StrictMath.sqrt(variance(elsewhere(type), type));
    }

    /**
     * Returns ln of how much longer jobs with the circumstance take than without it, beyond what is to be expected, and leaning on
     * it.
     *
     * @param usual variance of what causes make of a repair's jobs
     */
    double beyond(int type, double usual) {
        Elsewhere elsewhere = elsewhere(type);
        return (size[type] - elsewhere.mean) * usual / (usual + variance(elsewhere, type));
    }
}
