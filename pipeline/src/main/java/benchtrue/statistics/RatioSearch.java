package benchtrue.statistics;

import java.util.Arrays;

/**
 * Finds the ratios &theta; of the effects' standard deviations to the residual one that minimise the profiled REML criterion.
 *
 * <p>A few fixed-point steps (Harville 1977: &theta;&sup2; times the effects' squares over their degrees of freedom) come near, a
 * quasi-Newton search ends. The criterion depends on &theta;&sup2; only, so the search runs over all real numbers and a variance of
 * zero is an ordinary minimum at 0. Below a floor, where a level's information is under 1e-8, the criterion counts as quadratic.
 */
final class RatioSearch implements Surface {
    private static final int FIXED_POINT_STEPS = 8;
    private static final double FLOOR = 1e-4;
    private static final double NO_INFORMATION = 1e-8;
    private static final double NEAR_ZERO = 3;

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
        Fit near = search.near(search.start());
        double[] found = QuasiNewton.minimise(search, near.x, near.steps());
        return search.withZeros(search.at(found).equations);
    }

    private double[] start() {
        double[] ones = new double[floor.length];
        Arrays.fill(ones, 1);
        Fit fit = at(ones);
        for (int f = 0; f < floor.length; f++) {
            boolean everyRowItsOwn = counts.levelsUsed(f) == counts.used;
            ones[f] = everyRowItsOwn || !(fit.information(f) > NO_INFORMATION) ? 0 : 1;
        }
        return ones;
    }

    /** Takes fixed-point steps as long as the criterion falls. */
    private Fit near(double[] start) {
        Fit fit = at(start);
        for (int step = 0; step < FIXED_POINT_STEPS; step++) {
            double[] x = fit.x.clone();
            for (int f = 0; f < x.length; f++) {
                x[f] *= StrictMath.sqrt(fit.equations.squares(f) / fit.information(f));
            }
            Fit next = at(x);
            if (!(next.value() < fit.value())) {
                break;
            }
            fit = next;
        }
        return fit;
    }

    @Override
    public Fit at(double[] x) {
        double[] theta = new double[x.length];
        for (int f = 0; f < x.length; f++) {
            theta[f] = x[f] == 0 ? 0 : StrictMath.max(StrictMath.abs(x[f]), floor[f]);
        }
        return new Fit(x.clone(), new Henderson(counts, theta));
    }

    /** Sets ratios that ended near the floor to exactly 0: they would use less than 1e-7 degrees of freedom a level. */
    private Henderson withZeros(Henderson found) {
        double[] theta = found.theta.clone();
        for (int f = 0; f < floor.length; f++) {
            theta[f] = theta[f] <= NEAR_ZERO * floor[f] ? 0 : theta[f];
        }
        return new Henderson(counts, theta);
    }

    /** The criterion at one set of ratios. */
    private static final class Fit implements Surface.Point {
        private final double[] x;
        private final Henderson equations;
        private Uncertainty uncertainty;

        private Fit(double[] x, Henderson equations) {
            this.x = x;
            this.equations = equations;
        }

        @Override
        public double value() {
            return equations.value();
        }

        private double information(int factor) {
            uncertainty = uncertainty == null ? new Uncertainty(equations) : uncertainty;
            return uncertainty.information(factor);
        }

        /** 2/&theta; (information &minus; squares), continued straight to 0 below the floor. */
        @Override
        public double[] gradient() {
            double[] slope = new double[x.length];
            for (int f = 0; f < x.length; f++) {
                double theta = equations.theta[f];
                slope[f] = theta == 0 ? 0 : 2 * x[f] / (theta * theta) * (information(f) - equations.squares(f));
            }
            return slope;
        }

        /** About the inverse curvature of the criterion in each ratio; 0 holds a ratio at 0. */
        private double[] steps() {
            double[] steps = new double[x.length];
            for (int f = 0; f < x.length; f++) {
                double theta = equations.theta[f];
                steps[f] = theta == 0 ? 0 : theta * theta / (4 * information(f));
            }
            return steps;
        }
    }
}
