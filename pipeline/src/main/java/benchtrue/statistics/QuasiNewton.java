package benchtrue.statistics;

/**
 * Minimises a smooth surface by the BFGS update with backtracking (Nocedal, Wright 2006, algorithms 3.1 and 6.1). Stops when a step
 * promises or brings less than rounding (1e-14 of the value, at least 1e-14), or no step descends, or after 200 steps. A value of
 * {@code NaN} counts as too high.
 */
final class QuasiNewton {
    private static final int STEPS = 200;
    private static final int HALVINGS = 40;
    private static final double SUFFICIENT = 1e-4;
    private static final double ROUNDING = 1e-14;

    private final Surface surface;
    private final double[][] inverseHessian;
    private double[] x;
    private Surface.Point point;
    private double[] gradient;

    private QuasiNewton(Surface surface, double[] start) {
        this.surface = surface;
        this.x = start.clone();
        this.point = surface.at(x);
        this.gradient = point.gradient();
        this.inverseHessian = new double[x.length][x.length];
    }

    /**
     * Returns where the surface is lowest, near {@code start}.
     *
     * @param steps about the inverse curvature in each direction; 0 keeps a number where it is
     */
    static double[] minimise(Surface surface, double[] start, double[] steps) {
        QuasiNewton search = new QuasiNewton(surface, start);
        for (int i = 0; i < steps.length; i++) {
            search.inverseHessian[i][i] = steps[i];
        }
        boolean going = true;
        for (int step = 0; step < STEPS && going; step++) {
            going = search.descend();
        }
        return search.x;
    }

    /** One line search; returns whether to go on. */
    private boolean descend() {
        double[] direction = direction();
        double slope = dot(direction, gradient);
        double rounding = ROUNDING * StrictMath.max(1, StrictMath.abs(point.value()));
        double length = -slope > rounding ? 1 : 0;
        for (int halving = 0; halving < HALVINGS && length > 0; halving++, length /= 2) {
            double[] next = x.clone();
            for (int i = 0; i < x.length; i++) {
                next[i] += length * direction[i];
            }
            Surface.Point candidate = surface.at(next);
            double fall = point.value() - candidate.value();
            if (fall >= -SUFFICIENT * length * slope - rounding) {
                move(next, candidate);
                return fall > rounding;
            }
        }
        return false;
    }

    private double[] direction() {
        double[] direction = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            direction[i] = -dot(inverseHessian[i], gradient);
        }
        return direction;
    }

    private void move(double[] next, Surface.Point candidate) {
        double[] newGradient = candidate.gradient();
        double[] s = difference(next, x);
        double[] y = difference(newGradient, gradient);
        double curvature = dot(s, y);
        if (curvature > 0) {
            update(s, y, curvature);
        }
        x = next;
        point = candidate;
        gradient = newGradient;
    }

    private void update(double[] s, double[] y, double curvature) {
        double[] hy = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            hy[i] = dot(inverseHessian[i], y);
        }
        double factor = (1 + dot(y, hy) / curvature) / curvature;
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < x.length; j++) {
                inverseHessian[i][j] += factor * s[i] * s[j] - (hy[i] * s[j] + s[i] * hy[j]) / curvature;
            }
        }
    }

    private static double[] difference(double[] a, double[] b) {
        double[] result = a.clone();
        for (int i = 0; i < a.length; i++) {
            result[i] -= b[i];
        }
        return result;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
