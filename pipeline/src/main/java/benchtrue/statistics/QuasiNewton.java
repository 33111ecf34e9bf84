package benchtrue.statistics;

/**
 * Minimises a smooth surface by the BFGS update with backtracking (Nocedal, Wright 2006, algorithms 3.1 and 6.1). Stops when the step
 * promises less than 1e-13, or no step descends, or after 200 steps. A value of {@code NaN} counts as too high.
 */
final class QuasiNewton {
    private static final int STEPS = 200;
    private static final int HALVINGS = 40;
    private static final double PROMISE = 1e-13;
    private static final double SUFFICIENT = 1e-4;
    private static final double ROUNDING = 1e-14;
    private static final double FIRST_STEP = 0.5;

    private final Surface surface;
    private final double[][] inverseHessian;
    private double[] x;
    private Surface.Point point;
    private double[] gradient;
    /** Whether the inverse Hessian has the size of a measured curvature. */
    private boolean scaled;

    private QuasiNewton(Surface surface, double[] start) {
        this.surface = surface;
        this.x = start.clone();
        this.point = surface.at(x);
        this.gradient = point.gradient();
        this.inverseHessian = new double[x.length][x.length];
    }

    /** Returns where the surface is lowest, near {@code start}. */
    static double[] minimise(Surface surface, double[] start) {
        QuasiNewton search = new QuasiNewton(surface, start);
        double length = StrictMath.sqrt(dot(search.gradient, search.gradient));
        search.reset(FIRST_STEP / StrictMath.max(length, FIRST_STEP));
        boolean going = true;
        for (int step = 0; step < STEPS && going; step++) {
            going = search.descend();
        }
        return search.x;
    }

    private void reset(double scale) {
        for (int i = 0; i < x.length; i++) {
            java.util.Arrays.fill(inverseHessian[i], 0);
            inverseHessian[i][i] = scale;
        }
    }

    /** One line search; returns whether to go on. */
    private boolean descend() {
        double[] direction = direction();
        double slope = dot(direction, gradient);
        if (!(-slope > PROMISE)) {
            return false;
        }
        double length = 1;
        for (int halving = 0; halving < HALVINGS; halving++, length /= 2) {
            double[] next = x.clone();
            for (int i = 0; i < x.length; i++) {
                next[i] += length * direction[i];
            }
            Surface.Point candidate = surface.at(next);
            double enough = point.value() + SUFFICIENT * length * slope + ROUNDING * StrictMath.abs(point.value());
            if (candidate.value() <= enough) {
                move(next, candidate);
                return true;
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
            if (!scaled) {
                reset(curvature / dot(y, y));
                scaled = true;
            }
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

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
