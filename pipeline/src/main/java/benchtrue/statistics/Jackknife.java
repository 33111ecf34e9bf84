package benchtrue.statistics;

import java.util.Arrays;

/**
 * The delete-a-group jackknife (Tukey 1958; Efron 1982): the estimate recomputed with one group (a ticket, or a random group of
 * tickets) left out at a time. Variance is (g &minus; 1)/g &Sigma; (&theta;(j) &minus; mean of &theta;(.))&sup2;.
 *
 * <p>Give only groups that hold the thing estimated: a group that holds none of a repair type repeats the full estimate, and
 * counting it would inflate g. {@code NaN} among the values makes every result {@code NaN}; fewer than two groups too. O(g).
 *
 * @param groups number of groups, g
 * @param estimate from all groups
 * @param mean mean of the leave-one-out values
 * @param standardError square root of the jackknife variance
 * @param acceleration BCa's a = &Sigma; d&sup3; / (6 (&Sigma; d&sup2;)^1.5) with d = mean &minus; &theta;(j) (Efron 1987); 0 when all are equal
 */
public record Jackknife(int groups, double estimate, double mean, double standardError, double acceleration) {

    /** Returns the jackknife of {@code estimate} from its leave-one-group-out values. */
    public static Jackknife of(double estimate, double[] leaveOneOut) {
        int g = leaveOneOut.length;
        if (g < 2) {
            return new Jackknife(g, estimate, Double.NaN, Double.NaN, Double.NaN);
        }
        double mean = Moments.of(leaveOneOut).mean();
        double squares = 0;
        double cubes = 0;
        for (double value : leaveOneOut) {
            double d = mean - value;
            squares += d * d;
            cubes += d * d * d;
        }
        double error = StrictMath.sqrt((g - 1.0) / g * squares);
        double acceleration = squares == 0 ? 0 : cubes / (6 * squares * StrictMath.sqrt(squares));
        return new Jackknife(g, estimate, mean, error, acceleration);
    }

    /** Returns the jackknife of ln(ratio), for positive ratios: the scale on which a load factor is about symmetric. */
    public static Jackknife ofLog(double ratio, double[] leaveOneOut) {
        return of(
                StrictMath.log(ratio),
                Arrays.stream(leaveOneOut).map(StrictMath::log).toArray());
    }

    /** Returns the two-sided Student t interval, on the scale of the estimate, with g &minus; 1 degrees of freedom. */
    public Interval interval(double level) {
        double reach = -StudentT.quantile(Interval.lowerTail(level), groups - 1) * standardError;
        return new Interval(estimate - reach, estimate + reach);
    }

    /** Returns the p-value against "no more than {@code bound}": small means surely above. {@code NaN} if untestable. */
    public double chanceAtMost(double bound) {
        return StudentT.upperTail((estimate - bound) / standardError, groups - 1);
    }

    /** Returns the p-value against "no less than {@code bound}": small means surely below. {@code NaN} if untestable. */
    public double chanceAtLeast(double bound) {
        return StudentT.lowerTail((estimate - bound) / standardError, groups - 1);
    }

    /** Returns this jackknife of an estimate that is moved by a known amount. */
    public Jackknife shifted(double by) {
        return new Jackknife(groups, estimate + by, mean + by, standardError, acceleration);
    }

    /** Returns this jackknife with a further, independent variance that no left-out group shows. */
    public Jackknife widened(double variance) {
        double error = StrictMath.sqrt(standardError * standardError + variance);
        return new Jackknife(groups, estimate, mean, error, acceleration);
    }
}
