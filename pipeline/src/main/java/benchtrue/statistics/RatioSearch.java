package benchtrue.statistics;

import java.util.Arrays;

/**
 * Finds the ratios &theta; of the effects' standard deviations to the residual one that minimise the profiled REML criterion.
 *
 * <p>The criterion depends on &theta;&sup2; only, so the search runs over all real numbers and a variance of zero is an ordinary
 * minimum at 0. Below a floor (the factor's information is then under 1e-8 a level) the criterion counts as quadratic.
 */
final class RatioSearch implements Surface {
    private static final double FLOOR = 1e-4;
    private static final double NO_INFORMATION = 1e-8;
    private static final double NEAR_ZERO = 30;

    private final CrossCounts counts;
    private final double[] floor;

    private RatioSearch(CrossCounts counts) {
        this.counts = counts;
        floor = new double[counts.rows.factors.length];
        for (int f = 0; f < floor.length; f++) {
            floor[f] = FLOOR * StrictMath.sqrt((double) counts.levelsUsed(f) / counts.used);
        }
    }

    /** Returns the equations at the best ratios. A factor that the data can't tell from fixed effects or residuals gets 0. */
    static Henderson best(CrossCounts counts) {
        Henderson without = new Henderson(counts, new double[counts.rows.factors.length]);
        if (Double.isNaN(without.value())) {
            return without;
        }
        RatioSearch search = new RatioSearch(counts);
        double[] found = QuasiNewton.minimise(search, search.start());
        return search.withZeros(new Henderson(counts, search.clamped(found)));
    }

    private double[] start() {
        double[] ones = new double[floor.length];
        Arrays.fill(ones, 1);
        Uncertainty uncertainty = new Uncertainty(new Henderson(counts, ones));
        for (int f = 0; f < floor.length; f++) {
            boolean everyRowItsOwn = counts.levelsUsed(f) == counts.used;
            ones[f] = everyRowItsOwn || !(uncertainty.information(f) > NO_INFORMATION) ? 0 : 1;
        }
        return ones;
    }

    private double[] clamped(double[] x) {
        double[] theta = new double[x.length];
        for (int f = 0; f < x.length; f++) {
            theta[f] = StrictMath.max(StrictMath.abs(x[f]), floor[f]);
        }
        return theta;
    }

    @Override
    public Point at(double[] x) {
        double[] theta = clamped(x);
        double[] at = x.clone();
        Henderson equations = new Henderson(counts, theta);
        return new Point() {
            @Override
            public double value() {
                return equations.value();
            }

            @Override
            public double[] gradient() {
                double[] slope = equations.gradient();
                for (int f = 0; f < slope.length; f++) {
                    slope[f] *= at[f] / theta[f];
                }
                return slope;
            }
        };
    }

    /** Sets ratios near the floor to exactly 0 where the criterion is no higher for it. */
    private Henderson withZeros(Henderson found) {
        Henderson best = found;
        for (int f = 0; f < floor.length; f++) {
            if (best.theta[f] <= NEAR_ZERO * floor[f]) {
                double[] theta = best.theta.clone();
                theta[f] = 0;
                Henderson zero = new Henderson(counts, theta);
                best = zero.value() <= best.value() + NO_INFORMATION ? zero : best;
            }
        }
        return best;
    }
}
