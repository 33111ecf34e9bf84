package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

class QuasiNewtonTest {
    private static Surface surface(ToDoubleFunction<double[]> value, Function<double[], double[]> gradient) {
        return x -> new Surface.Point() {
            @Override
            public double value() {
                return value.applyAsDouble(x);
            }

            @Override
            public double[] gradient() {
                return gradient.apply(x);
            }
        };
    }

    /** Rosenbrock 1960: a bent valley from (-1.2, 1) to its lowest point at (1, 1). */
    @Test
    void rosenbrocksValley() {
        Surface valley = surface(x -> 100 * Math.pow(x[1] - x[0] * x[0], 2) + Math.pow(1 - x[0], 2), x ->
                new double[] {-400 * x[0] * (x[1] - x[0] * x[0]) - 2 * (1 - x[0]), 200 * (x[1] - x[0] * x[0])});
        double[] found = QuasiNewton.minimise(valley, new double[] {-1.2, 1}, new double[] {0.001, 0.001});
        assertThat(found).containsExactly(new double[] {1, 1}, within(1e-6));
    }

    @Test
    void aStepOfZeroHoldsANumberInPlace() {
        Surface bowl = surface(x -> x[0] * x[0] + x[1] * x[1], x -> new double[] {2 * x[0], 2 * x[1]});
        double[] found = QuasiNewton.minimise(bowl, new double[] {3, 4}, new double[] {0.1, 0});
        assertThat(found).containsExactly(new double[] {0, 4}, within(1e-7));
    }

    @Test
    void anEndlessSlopeEndsAfterTwoHundredSteps() {
        Surface slope = surface(x -> -x[0], x -> new double[] {-1});
        assertThat(QuasiNewton.minimise(slope, new double[] {0}, new double[] {1}))
                .containsExactly(200);
    }

    @Test
    void whereNothingDescendsItStaysOrStops() {
        Surface cliff = surface(x -> x[0] == 1 ? 5 : Double.NaN, x -> new double[] {1});
        assertThat(QuasiNewton.minimise(cliff, new double[] {1}, new double[] {1}))
                .containsExactly(1);
        Surface plain = surface(x -> 5, x -> new double[] {1});
        assertThat(QuasiNewton.minimise(plain, new double[] {1}, new double[] {1}))
                .containsExactly(new double[] {1}, within(1e-8));
    }
}
