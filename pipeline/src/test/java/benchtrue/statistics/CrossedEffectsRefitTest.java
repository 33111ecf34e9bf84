package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Refits at given variances, and columns that say nothing. */
class CrossedEffectsRefitTest {
    private static final double[][] NONE = {};

    private static Factor batch(ReferenceData data) {
        int[] level = data.levels("batch");
        return new Factor(10, level);
    }

    @Test
    void aRefitWithTheSameRowsIsTheSameFit() {
        ReferenceData data = ReferenceData.read("pastes.csv");
        double[] y = data.numbers("strength");
        double[] ones = new double[y.length];
        Arrays.fill(ones, 1);
        CrossedEffects fit = MixedModels.fit(y, NONE, batch(data));
        CrossedEffects again = fit.refit(y, ones);
        assertThat(again.coefficient(0)).isCloseTo(fit.coefficient(0), within(1e-12));
        assertThat(again.effect(0, 3)).isCloseTo(fit.effect(0, 3), within(1e-12));
        assertThat(again.variance(0)).isEqualTo(fit.variance(0));
    }

    @Test
    void aRefitKeepsTheVariancesAndFollowsTheResponse() {
        ReferenceData data = ReferenceData.read("pastes.csv");
        double[] y = data.numbers("strength");
        double[] weights = new double[y.length];
        Arrays.fill(weights, 1);
        CrossedEffects fit = MixedModels.fit(y, NONE, batch(data));
        double[] doubled = Arrays.stream(y).map(v -> 2 * v).toArray();
        CrossedEffects again = fit.refit(doubled, weights);
        assertThat(again.residualVariance()).isEqualTo(fit.residualVariance());
        assertThat(again.effect(0, 3)).isCloseTo(2 * fit.effect(0, 3), within(1e-12));
        int[] level = data.levels("batch");
        for (int row = 0; row < weights.length; row++) {
            weights[row] = level[row] == 3 ? 0 : 1;
        }
        assertThat(fit.refit(y, weights).effect(0, 3)).isZero();
    }

    @Test
    void aColumnThatNeverChangesIsLeftOut() {
        ReferenceData data = ReferenceData.read("pastes.csv");
        double[] y = data.numbers("strength");
        double[] constant = new double[y.length];
        // Not exact in binary, so that its weighted mean is off by a rounding error.
        Arrays.fill(constant, StrictMath.log(2));
        CrossedEffects without = MixedModels.fit(y, NONE, batch(data));
        CrossedEffects fit = MixedModels.fit(y, new double[][] {constant}, batch(data));
        assertThat(fit.coefficient(1)).isNaN();
        assertThat(fit.coefficient(0)).isCloseTo(without.coefficient(0), within(1e-12));
        assertThat(fit.criterion()).isCloseTo(without.criterion(), within(1e-9));
    }

    @Test
    void aRowWithoutALevelStandsAboutTheAverageOne() {
        ReferenceData data = ReferenceData.read("pastes.csv");
        double[] y = data.numbers("strength");
        int[] level = data.levels("batch").clone();
        level[7] = -1;
        CrossedEffects fit = MixedModels.fit(y, NONE, new Factor(10, level));
        double[] residuals = fit.residuals();
        assertThat(residuals[7]).isCloseTo(y[7] - fit.coefficient(0), within(1e-12));
        assertThat(residuals[6]).isCloseTo(y[6] - fit.coefficient(0) - fit.effect(0, level[6]), within(1e-12));
    }

    @Test
    void marksOfFewAndOfMostRowsSayTheSameWhicheverValueStandsForTheirAbsence() {
        ReferenceData data = ReferenceData.read("pastes.csv");
        double[] y = data.numbers("strength");
        double[][] marks = new double[3][y.length];
        double[][] shifted = new double[3][y.length];
        for (int row = 0; row < y.length; row++) {
            marks[0][row] = row % 7 == 2 ? 1 : 0;
            marks[1][row] = row * row % 11 % 4;
            marks[2][row] = row % 5 == 0 ? row / 10.0 : 0;
            shifted[0][row] = marks[0][row] + 3;
            shifted[1][row] = marks[1][row] + 1;
            shifted[2][row] = marks[2][row] - 2;
        }
        CrossedEffects fit = MixedModels.fit(y, marks, batch(data)).robust(Huber.K);
        CrossedEffects moved = MixedModels.fit(y, shifted, batch(data)).robust(Huber.K);
        for (int column = 1; column <= 3; column++) {
            assertThat(fit.coefficient(column)).isCloseTo(moved.coefficient(column), within(1e-9));
            assertThat(fit.error(column)).isCloseTo(moved.error(column), within(1e-9));
        }
        assertThat(fit.criterion()).isCloseTo(moved.criterion(), within(1e-9));
        assertThat(fit.variance(0)).isCloseTo(moved.variance(0), within(1e-9));
        assertThat(fit.effect(0, 3)).isCloseTo(moved.effect(0, 3), within(1e-9));
    }
}
