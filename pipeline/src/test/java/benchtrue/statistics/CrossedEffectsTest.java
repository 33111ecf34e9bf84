package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

/** The published lme4 fits (Bates et al. 2015 and the lme4 book); more digits COMPUTED with lme4 1.1-31 on R 4.2.2. */
class CrossedEffectsTest {
    private static final double[][] NONE = {};
    private static final double DIGITS = 2e-3;

    private static Factor factor(ReferenceData data, String column) {
        int[] level = data.levels(column);
        return new Factor(java.util.Arrays.stream(level).max().getAsInt() + 1, level);
    }

    private static void effects(CrossedEffects fit, int factor, String expected, double tolerance) {
        double[] values = ReferenceData.numbersIn(expected);
        for (int level = 0; level < values.length; level++) {
            assertThat(fit.effect(factor, level)).as("level %d", level).isCloseTo(values[level], within(tolerance));
        }
    }

    /** Davies and Goldsmith 1972: 24 plates crossed with 6 samples; published criterion 330.9, deviations 0.8467, 1.9316, 0.5499. */
    @Test
    void penicillinOfDaviesAndGoldsmith1972() {
        ReferenceData data = ReferenceData.read("penicillin.csv");
        CrossedEffects fit =
                CrossedEffects.fit(data.numbers("diameter"), NONE, factor(data, "plate"), factor(data, "sample"));
        assertThat(fit.criterion()).isCloseTo(330.860588991, within(1e-8));
        assertThat(fit.coefficient(0)).isCloseTo(22.9722222222, within(1e-9));
        assertThat(fit.error(0)).isCloseTo(0.80857335312, withPercentage(DIGITS));
        assertThat(StrictMath.sqrt(fit.variance(0))).isCloseTo(0.8467, within(5e-5));
        assertThat(StrictMath.sqrt(fit.variance(1))).isCloseTo(1.9316, within(5e-5));
        assertThat(StrictMath.sqrt(fit.residualVariance())).isCloseTo(0.5499, within(5e-5));
        assertThat(fit.variance(0)).isCloseTo(0.7169082860, withPercentage(DIGITS));
        assertThat(fit.variance(1)).isCloseTo(3.7309174888, withPercentage(DIGITS));
        assertThat(fit.residualVariance()).isCloseTo(0.3024154546, withPercentage(DIGITS));
        effects(fit, 0, "0.8045470506 0.8045470506 0.181671914652", 1e-6);
        effects(
                fit,
                1,
                "2.18705796677 -1.01047614921 1.93789946423 -0.0968949732156 -0.0138421390343 -3.00374416956",
                1e-5);
        assertThat(fit.conditionalDeviation(1, 0)).isCloseTo(0.202170812239, withPercentage(DIGITS));
    }

    /** The same book: casks within batches, nested; published criterion 247.0, deviations 2.904, 1.287, 0.8234. */
    @Test
    void pastesOfDaviesAndGoldsmith1972() {
        ReferenceData data = ReferenceData.read("pastes.csv");
        CrossedEffects fit =
                CrossedEffects.fit(data.numbers("strength"), NONE, factor(data, "batch"), factor(data, "sample"));
        assertThat(fit.criterion()).isCloseTo(246.990745853, within(1e-8));
        assertThat(fit.coefficient(0)).isCloseTo(60.0533333333, within(1e-9));
        assertThat(fit.error(0)).isCloseTo(0.676870071168, withPercentage(DIGITS));
        assertThat(StrictMath.sqrt(fit.variance(1))).isCloseTo(2.904, within(5e-4));
        assertThat(StrictMath.sqrt(fit.variance(0))).isCloseTo(1.287, within(5e-4));
        assertThat(StrictMath.sqrt(fit.residualVariance())).isCloseTo(0.8234, within(5e-5));
        assertThat(fit.variance(1)).isCloseTo(8.4336665619, withPercentage(DIGITS));
        assertThat(fit.variance(0)).isCloseTo(1.6573087447, withPercentage(DIGITS));
        assertThat(fit.residualVariance()).isCloseTo(0.6780000023, withPercentage(DIGITS));
        effects(
                fit,
                0,
                "0.800644313539 -0.272508456115 0.722267987665 -0.127813700656 -1.50241387752 0.354502150874"
                        + " -0.0554663229264 1.10812066889 -0.495579537447 -0.531753226312",
                1e-5);
        effects(fit, 1, "1.77468696435 0.33265109625 1.96695841344", 1e-5);
    }

    /** Constructed: 12 types x 7 technicians x 3 writers, unbalanced, with a fixed effect. */
    @Test
    void threeCrossedFactorsAndATrait() {
        ReferenceData data = ReferenceData.read("crossed-constructed.csv");
        CrossedEffects fit = CrossedEffects.fit(
                data.numbers("y"),
                new double[][] {data.numbers("vintage")},
                factor(data, "type"),
                factor(data, "tech"),
                factor(data, "writer"));
        assertThat(fit.criterion()).isCloseTo(289.329077073, within(1e-7));
        assertThat(fit.coefficient(0)).isCloseTo(0.0924861905322, within(1e-6));
        assertThat(fit.error(0)).isCloseTo(0.0676967887487, withPercentage(DIGITS));
        assertThat(fit.coefficient(1)).isCloseTo(0.208600505788, within(1e-7));
        assertThat(fit.error(1)).isCloseTo(0.0278208273821, withPercentage(DIGITS));
        assertThat(fit.variance(0)).isCloseTo(0.0181052057208, withPercentage(DIGITS));
        assertThat(fit.variance(1)).isCloseTo(0.0006541447782, withPercentage(DIGITS));
        assertThat(fit.variance(2)).isCloseTo(0.0079333874793, withPercentage(DIGITS));
        assertThat(fit.residualVariance()).isCloseTo(0.0883255345810, withPercentage(DIGITS));
    }
}
