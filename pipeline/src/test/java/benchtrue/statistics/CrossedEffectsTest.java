package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Published fits first (Bates et al. 2015 and lme4's manual, VERIFIED as printed there), then everything that R computes of
 * them with lme4 1.1-31 and from first principles (mixed-models.csv, COMPUTED).
 */
class CrossedEffectsTest {
    private static final double[][] NONE = {};
    private static final ReferenceData CROSSED = ReferenceData.read("crossed-constructed.csv");
    private static final double[] Y = CROSSED.numbers("y");
    private static final double[][] VINTAGE = {CROSSED.numbers("vintage")};
    private static final Factor TYPE = numbered("type", 12);
    private static final Factor TECH = numbered("tech", 7);
    private static final Factor WRITER = numbered("writer", 3);

    private static Factor numbered(String column, int levels) {
        return new Factor(
                levels,
                Arrays.stream(CROSSED.numbers(column))
                        .mapToInt(v -> (int) v - 1)
                        .toArray());
    }

    private static Factor factor(ReferenceData data, String column) {
        int[] level = data.levels(column);
        return new Factor(Arrays.stream(level).max().getAsInt() + 1, level);
    }

    private static Factor every(int rows, int levels) {
        int[] level = new int[rows];
        Arrays.setAll(level, i -> i % levels);
        return new Factor(levels, level);
    }

    private static void agrees(CrossedEffects fit, String name, int factors, int columns) {
        assertThat(fit.criterion()).as("criterion").isCloseTo(MixedModels.of(name, "criterion"), within(1e-8));
        close("residual", fit.residualVariance(), MixedModels.of(name, "residual"));
        double[] fixed = MixedModels.of(name, "fixed", 0);
        double[] errors = MixedModels.of(name, "error", 0);
        for (int j = 0; j <= columns; j++) {
            close("coefficient " + j, fit.coefficient(j), fixed[j]);
            close("its error", fit.error(j), errors[j]);
        }
        double[] variances = MixedModels.of(name, "variance", 0);
        for (int f = 0; f < factors; f++) {
            close("variance " + f, fit.variance(f), variances[f]);
            double[] effects = MixedModels.of(name, "effect", f);
            double[] predicted = MixedModels.of(name, "effectError", f);
            for (int level = 0; level < effects.length; level++) {
                String where = f + "/" + level;
                close("effect " + where, fit.effect(f, level), effects[level]);
                close("effect error " + where, MixedModels.effectError(fit, f, level), predicted[level]);
            }
        }
    }

    private static void close(String what, double value, double expected) {
        assertThat(value).as(what).isCloseTo(expected, within(2e-5 * Math.max(0.01, Math.abs(expected))));
    }

    private static void published(double variance, double deviation, double digits) {
        assertThat(StrictMath.sqrt(variance)).isCloseTo(deviation, within(digits));
    }

    /** 24 plates crossed with 6 samples; published: criterion 330.9, deviations 0.8467, 1.9316, 0.5499. */
    @Test
    void penicillinOfDaviesAndGoldsmith1972() {
        ReferenceData data = ReferenceData.read("penicillin.csv");
        CrossedEffects fit =
                MixedModels.fit(data.numbers("diameter"), NONE, factor(data, "plate"), factor(data, "sample"));
        assertThat(fit.criterion()).isCloseTo(330.860588991, within(1e-8));
        published(fit.variance(0), 0.8467, 5e-5);
        published(fit.variance(1), 1.9316, 5e-5);
        published(fit.residualVariance(), 0.5499, 5e-5);
        close("sample A", fit.effect(1, 0), 2.18705796677);
        close("sample F", fit.effect(1, 5), -3.00374416956);
        close("plate c", fit.effect(0, 2), 0.181671914652);
        agrees(fit, "penicillin", 2, 0);
        close(
                "a row of plate a, sample A",
                fit.predictError(new double[0], new int[] {0, 0}),
                MixedModels.of("penicillin", "predictError"));
    }

    /** Casks within batches, nested; published: criterion 247.0, deviations 2.904, 1.287, 0.8234. */
    @Test
    void pastesOfDaviesAndGoldsmith1972() {
        ReferenceData data = ReferenceData.read("pastes.csv");
        CrossedEffects fit =
                MixedModels.fit(data.numbers("strength"), NONE, factor(data, "batch"), factor(data, "sample"));
        assertThat(fit.criterion()).isCloseTo(246.990745853, within(1e-8));
        published(fit.variance(1), 2.904, 5e-4);
        published(fit.variance(0), 1.287, 5e-4);
        published(fit.residualVariance(), 0.8234, 5e-5);
        close("batch A", fit.effect(0, 0), 0.800644313539);
        close("first cask", fit.effect(1, 0), 1.77468696435);
        agrees(fit, "pastes", 2, 0);
        close("first row", fit.predictError(new double[0], new int[] {0, 0}), MixedModels.of("pastes", "predictError"));
    }

    /** One factor; balanced, so that REML is the analysis of variance: between 1764.05, within 2451.25, criterion 319.654. */
    @Test
    void dyestuffOfDaviesAndGoldsmith1972() {
        ReferenceData data = ReferenceData.read("dyestuff.csv");
        CrossedEffects fit = MixedModels.fit(data.numbers("yield"), NONE, factor(data, "batch"));
        assertThat(fit.criterion()).isCloseTo(319.654276842, within(1e-8));
        assertThat(fit.variance(0)).isCloseTo(1764.05, within(0.005));
        assertThat(fit.residualVariance()).isCloseTo(2451.25, within(0.0005));
        assertThat(fit.error(0)).isCloseTo(19.3834121788, within(1e-5));
        double[] shrunk = ReferenceData.numbersIn(
                "1509.89314863 1527.89126336 1556.06222555 1504.41546154 1584.23318774 1482.50471317");
        for (int batch = 0; batch < 6; batch++) {
            assertThat(fit.predict(new double[0], new int[] {batch})).isCloseTo(shrunk[batch], within(1e-3));
        }
        agrees(fit, "dyestuff", 1, 0);
    }

    /** Box and Tiao 1973: no spread between batches beyond chance; the variance is 0 and every batch leans on the mean 5.6656. */
    @Test
    void dyestuffTwoOfBoxAndTiao1973() {
        ReferenceData data = ReferenceData.read("dyestuff2.csv");
        CrossedEffects fit = MixedModels.fit(data.numbers("yield"), NONE, factor(data, "batch"));
        assertThat(fit.variance(0)).isZero();
        assertThat(fit.residualVariance()).isCloseTo(13.8063096276, within(1e-9));
        assertThat(fit.predict(new double[0], new int[] {3})).isCloseTo(5.6656, within(1e-12));
        agrees(fit, "dyestuff2", 1, 0);
    }

    /** Constructed: 12 types x 7 technicians x 3 writers, unbalanced, with a fixed effect. */
    @Test
    void typesTechniciansAndWritersWithATrait() {
        CrossedEffects fit = MixedModels.fit(Y, VINTAGE, TYPE, TECH, WRITER);
        assertThat(fit.criterion()).isCloseTo(289.329077073, within(1e-8));
        close("variance of types", fit.variance(0), 0.0181052057208);
        close("variance of technicians", fit.variance(1), 0.0006541447782);
        close("vintage", fit.coefficient(1), 0.208600505788);
        close("first type", fit.effect(0, 0), -0.107932084642);
        close("first writer", fit.effect(2, 0), 0.0152288712826);
        agrees(fit, "crossed", 3, 1);
        int[] levels = {TYPE.level()[0], TECH.level()[0], WRITER.level()[0]};
        close(
                "first row",
                fit.predictError(new double[] {VINTAGE[0][0]}, levels),
                MixedModels.of("crossed", "predictError"));
        assertThat(Y[0] - fit.predict(new double[] {VINTAGE[0][0]}, levels))
                .isCloseTo(fit.residuals()[0], within(1e-12));
    }

    @Test
    void aWeightDividesTheRowsVariance() {
        double[] weights = new double[Y.length];
        Arrays.setAll(weights, i -> 0.5 + i % 4 / 2.0);
        CrossedEffects fit = CrossedEffects.fit(Y, VINTAGE, weights, TYPE, TECH, WRITER);
        agrees(fit, "crossed-weighted", 3, 1);
        assertThat(fit.weight(3)).isEqualTo(2);
    }

    @Test
    void aLineWithoutATechnicianOnRecordStillCounts() {
        int[] level = TECH.level().clone();
        for (int i = 0; i < level.length; i += 3) {
            level[i] = -1;
        }
        agrees(MixedModels.fit(Y, VINTAGE, TYPE, new Factor(7, level), WRITER), "crossed-absent", 3, 1);
        int[] types = TYPE.level().clone();
        for (int i = 0; i < types.length; i += 3) {
            types[i] = -1;
        }
        CrossedEffects aside = MixedModels.fit(Y, VINTAGE, new Factor(12, types), TECH);
        CrossedEffects wide = MixedModels.fit(Y, VINTAGE, new Factor(12, types), new Factor(40, TECH.level()));
        close("the same, whichever factor is absorbed", wide.criterion(), aside.criterion());
        close("the same variance", wide.variance(0), aside.variance(0));
        close("the same effect", wide.effect(0, 3), aside.effect(0, 3));
    }

    /** A grouping that has nothing to do with the hours gets variance 0, whether it is absorbed or not, and leaves the others alone. */
    @Test
    void theDayOfTheWeekHasNoVariance() {
        CrossedEffects fit = MixedModels.fit(Y, VINTAGE, TYPE, every(Y.length, 5));
        assertThat(fit.variance(1)).isZero();
        assertThat(fit.effect(1, 3)).isZero();
        assertThat(MixedModels.effectError(fit, 1, 3)).isZero();
        agrees(fit, "crossed-nothing", 2, 1);
        CrossedEffects aside = MixedModels.fit(
                Y, VINTAGE, TYPE, new Factor(50, every(Y.length, 5).level()));
        assertThat(aside.variance(1)).isZero();
        assertThat(aside.effect(1, 3)).isZero();
        close("types as before", aside.variance(0), fit.variance(0));
    }

    /** One line in twenty four and a half times as long: Huber weights iterated in R at the plain fit's variances. */
    @Test
    void wildLinesAreWeightedDown() {
        double[] wild = Y.clone();
        for (int i = 7; i < wild.length; i += 20) {
            wild[i] += 1.5;
        }
        CrossedEffects plain = MixedModels.fit(wild, VINTAGE, TYPE, TECH, WRITER);
        agrees(plain, "crossed-wild", 3, 1);
        CrossedEffects robust = plain.robust(Huber.K);
        assertThat(robust.variance(0)).isEqualTo(plain.variance(0));
        for (int j = 0; j < 2; j++) {
            close("coefficient " + j, robust.coefficient(j), MixedModels.of("crossed-robust", "fixed", 0)[j]);
        }
        for (int f = 0; f < 3; f++) {
            double[] effects = MixedModels.of("crossed-robust", "effect", f);
            for (int level = 0; level < effects.length; level++) {
                close("effect " + f + "/" + level, robust.effect(f, level), effects[level]);
            }
        }
        long down = 0;
        for (int i = 0; i < wild.length; i++) {
            down += robust.weight(i) < 1 ? 1 : 0;
        }
        assertThat((double) down).isEqualTo(MixedModels.of("crossed-robust", "downWeighted"));
        assertThat(robust.weight(7)).isLessThan(0.5);
        assertThat(plain.robust(Huber.K, 1).coefficient(0)).isBetween(robust.coefficient(0), plain.coefficient(0));
    }

    /** Row weights of 2 at given variances are rows that stand twice, as in a resample. */
    @Test
    void aResampleKeepsTheVariances() {
        CrossedEffects fit = MixedModels.fit(Y, VINTAGE, TYPE, TECH, WRITER);
        double[] twice = new double[Y.length];
        Arrays.fill(twice, 1);
        CrossedEffects same = fit.refit(Y, twice);
        assertThat(same.effect(0, 4)).isEqualTo(fit.effect(0, 4));
        Arrays.setAll(twice, i -> i % 3);
        CrossedEffects resample = fit.refit(Y, twice);
        assertThat(resample.variance(0)).isEqualTo(fit.variance(0));
        assertThat(resample.residualVariance()).isEqualTo(fit.residualVariance());
        assertThat(resample.effect(0, 4)).isNotCloseTo(fit.effect(0, 4), within(1e-3));
        assertThatIllegalArgumentException().isThrownBy(() -> fit.refit(Y, new double[] {1}));
    }

    /** A row of weight 0 is no row: leaving rows out by weight or by hand is the same. */
    @Test
    void aLineOfWeightZeroIsNoLine() {
        double[] weights = new double[Y.length];
        Arrays.fill(weights, 0, 400, 1);
        CrossedEffects weighted = CrossedEffects.fit(Y, VINTAGE, weights, TYPE, TECH);
        CrossedEffects cut = MixedModels.fit(
                Arrays.copyOf(Y, 400),
                new double[][] {Arrays.copyOf(VINTAGE[0], 400)},
                new Factor(12, Arrays.copyOf(TYPE.level(), 400)),
                new Factor(7, Arrays.copyOf(TECH.level(), 400)));
        assertThat(weighted.criterion()).isCloseTo(cut.criterion(), within(1e-9));
        close("variance", weighted.variance(0), cut.variance(0));
        close("error", weighted.error(1), cut.error(1));
        CrossedEffects robust = weighted.robust(Huber.K);
        CrossedEffects robustCut = cut.robust(Huber.K);
        for (int row = 0; row < 400; row++) {
            assertThat(robust.weight(row)).isCloseTo(robustCut.weight(row), within(1e-5));
        }
        assertThat(robust.weight(400)).isZero();
    }

    /** One technician alone is the intercept; a level for every line is the residual: neither has a variance of its own. */
    @Test
    void whatTheDataCannotTellApartHasNoVariance() {
        CrossedEffects plain = MixedModels.fit(Y, VINTAGE, TYPE);
        CrossedEffects alone = MixedModels.fit(Y, VINTAGE, TYPE, new Factor(1, new int[Y.length]));
        assertThat(alone.variance(1)).isZero();
        close("types as without", alone.variance(0), plain.variance(0));
        int[] row = new int[Y.length];
        Arrays.setAll(row, i -> i);
        CrossedEffects each = MixedModels.fit(Y, VINTAGE, TYPE, new Factor(Y.length, row));
        assertThat(each.variance(1)).isZero();
        close("types as without", each.variance(0), plain.variance(0));
        close("residual as without", each.residualVariance(), plain.residualVariance());
    }

    /** A trait that repeats another gets no coefficient and no part in predictions. */
    @Test
    void aTraitThatRepeatsAnotherGetsNoCoefficient() {
        double[][] doubled = {
            VINTAGE[0], Arrays.stream(VINTAGE[0]).map(v -> 3 - v).toArray(), new double[Y.length]
        };
        CrossedEffects fit = MixedModels.fit(Y, doubled, TYPE, TECH);
        CrossedEffects plain = MixedModels.fit(Y, VINTAGE, TYPE, TECH);
        assertThat(fit.coefficient(2)).isNaN();
        assertThat(fit.error(2)).isNaN();
        assertThat(fit.coefficient(3)).isNaN();
        close("criterion", fit.criterion(), plain.criterion());
        close("intercept", fit.coefficient(0), plain.coefficient(0));
        close("its error", fit.error(0), plain.error(0));
        close("vintage", fit.coefficient(1), plain.coefficient(1));
        close(
                "a prediction",
                fit.predict(new double[] {1, 2, 0}, new int[] {2, -1}),
                plain.predict(new double[] {1}, new int[] {2, -1}));
        close(
                "its error",
                fit.predictError(new double[] {1, 2, 0}, new int[] {-1, 3}),
                plain.predictError(new double[] {1}, new int[] {-1, 3}));
    }

    /** A type never done yet: no effect, and all of the spread between types as its error. */
    @Test
    void aTypeWithoutLinesIsAnAverageOne() {
        CrossedEffects fit = MixedModels.fit(Y, VINTAGE, new Factor(13, TYPE.level()), TECH);
        CrossedEffects plain = MixedModels.fit(Y, VINTAGE, TYPE, TECH);
        assertThat(fit.effect(0, 12)).isZero();
        assertThat(MixedModels.effectError(fit, 0, 12)).isCloseTo(StrictMath.sqrt(fit.variance(0)), within(1e-12));
        close("variance of types", fit.variance(0), plain.variance(0));
    }

    @Test
    void hoursWithoutScatterHaveNoVariance() {
        double[] same = new double[60];
        Arrays.fill(same, 0.3);
        CrossedEffects fit = MixedModels.fit(same, NONE, every(60, 5), every(60, 4));
        assertThat(fit.coefficient(0)).isCloseTo(0.3, within(1e-12));
        assertThat(fit.variance(0)).isZero();
        assertThat(fit.residualVariance()).isCloseTo(0, within(1e-25));
        assertThat(fit.robust(Huber.K).effect(0, 0)).isZero();
    }

    /** Lines that agree within each type to the last digit: every type stands on its own mean, and no residual is left. */
    @Test
    void linesThatAgreeWithinEachTypeStandOnTheirMeans() {
        Factor five = every(60, 5);
        double[] byType = Arrays.stream(five.level()).mapToDouble(l -> l * 0.1).toArray();
        CrossedEffects fit = MixedModels.fit(byType, NONE, five);
        for (int type = 0; type < 5; type++) {
            assertThat(fit.effect(0, type)).isCloseTo((type - 2) * 0.1, within(1e-5));
        }
        assertThat(fit.variance(0)).isPositive();
        assertThat(fit.residualVariance()).isLessThan(1e-9);
    }

    @Test
    void tooFewLinesGiveNoVariance() {
        CrossedEffects one = MixedModels.fit(new double[] {0.3}, NONE, new Factor(1, new int[1]));
        assertThat(one.coefficient(0)).isEqualTo(0.3);
        assertThat(one.error(0)).isNaN();
        assertThat(one.residualVariance()).isNaN();
        assertThat(one.effect(0, 0)).isZero();
        CrossedEffects none = MixedModels.fit(new double[0], NONE, new Factor(2, new int[0]));
        assertThat(none.coefficient(0)).isNaN();
        assertThat(none.criterion()).isNaN();
        assertThat(MixedModels.effectError(none, 0, 1)).isNaN();
    }

    @Test
    void refusesWhatIsNoModel() {
        double[] y = {1, 2, 3};
        Factor two = new Factor(2, new int[] {0, 1, 1});
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Factor(2, new int[] {0, 2}))
                .withMessageContaining("row 1 has level 2");
        assertThatIllegalArgumentException().isThrownBy(() -> new Factor(2, new int[] {-2}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MixedModels.fit(y, NONE, new Factor(2, new int[] {0, 1})))
                .withMessageContaining("2 rows, expected 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MixedModels.fit(y, new double[][] {{1, 2}}, two))
                .withMessageContaining("column has 2 rows");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MixedModels.fit(new double[] {1, Double.NaN, 2}, NONE, two))
                .withMessageContaining("response at row 1 is NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CrossedEffects.fit(y, NONE, new double[] {1, -1, 1}, two));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> MixedModels.fit(y, NONE, new Factor(9_000, new int[3]), new Factor(9_000, new int[3])))
                .withMessageContaining("leave a factor out");
    }

    /**
     * Without a factor it is least squares: R datasets::trees, log(volume) on log(girth); COMPUTED with R 4.2.2
     * {@code lm(log(Volume) ~ log(Girth), trees)}.
     */
    @Test
    void withoutFactorsItIsLeastSquares() {
        ReferenceData trees = ReferenceData.read("trees.csv");
        CrossedEffects fit =
                MixedModels.fit(logs(trees.numbers("volume")), new double[][] {logs(trees.numbers("girth"))});
        assertThat(fit.coefficient(0)).isCloseTo(-2.35332494044, within(5e-10));
        assertThat(fit.error(0)).isCloseTo(0.23066284156, within(5e-10));
        assertThat(fit.coefficient(1)).isCloseTo(2.19996993209, within(5e-10));
        assertThat(fit.error(1)).isCloseTo(0.0898345534228, within(5e-10));
        assertThat(StrictMath.sqrt(fit.residualVariance())).isCloseTo(0.114957819774, within(5e-11));
    }

    private static double[] logs(double[] numbers) {
        return Arrays.stream(numbers).map(StrictMath::log).toArray();
    }
}
