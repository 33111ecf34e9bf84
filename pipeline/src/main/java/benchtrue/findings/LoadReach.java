package benchtrue.findings;

import java.util.Arrays;

/**
 * How far a repair's load may lie from what its log says for reasons that no number of jobs would show. By repair-type code.
 *
 * @param middle factor that brings a load to the middle of what it may be; 1 where nothing is in doubt
 * @param lower factor, at most 1, by which the middle may really be lower
 * @param higher factor, at least 1, by which it may really be higher
 * @param putBack factor within the middle that time on wrong tickets has
 */
public record LoadReach(double[] middle, double[] lower, double[] higher, double[] putBack) {
    /** Returns that loads lie between two factors of what is logged, in the middle most likely. */
    static LoadReach between(double[] one, double[] other) {
        double[] ones = new double[one.length];
        Arrays.fill(ones, 1);
        LoadReach reach = new LoadReach(new double[one.length], new double[one.length], new double[one.length], ones);
        for (int type = 0; type < one.length; type++) {
            reach.middle[type] = (one[type] + other[type]) / 2;
            reach.lower[type] = Math.min(one[type], other[type]) / reach.middle[type];
            reach.higher[type] = Math.max(one[type], other[type]) / reach.middle[type];
        }
        return reach;
    }

    /** Returns this where a load may or may not have been moved by further factors; the middle stays. */
    LoadReach orMoved(double[] factors) {
        double[] down = lower.clone();
        double[] up = higher.clone();
        for (int type = 0; type < down.length; type++) {
            down[type] *= Math.min(1, factors[type]);
            up[type] *= Math.max(1, factors[type]);
        }
        return new LoadReach(middle, down, up, putBack);
    }

    /** Returns this with time on wrong tickets put back as far as another reach says. */
    LoadReach withPutBack(LoadReach put) {
        return new LoadReach(
                product(middle, put.middle), product(lower, put.lower), product(higher, put.higher), put.middle);
    }

    private static double[] product(double[] one, double[] other) {
        double[] product = one.clone();
        Arrays.setAll(product, type -> one[type] * other[type]);
        return product;
    }
}
