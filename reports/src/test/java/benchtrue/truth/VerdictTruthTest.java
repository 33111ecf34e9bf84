package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.sample.Loads;
import benchtrue.settings.Settings;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Verdicts against the known truth of invented shops of 1,200 tickets. The share of all seeds to run is the system property
 * {@code truth.share}, 1 where it is not set.
 */
class VerdictTruthTest {
    private static final long FROM = 1;
    private static final double SHARE = Double.parseDouble(System.getProperty("truth.share", "1"));

    @Test
    void aFewShopsRangesHoldTheTrueLoadAndFlagsAreTrue() {
        VerdictTruth truth = VerdictTruth.of(FROM, 3, 0.6, Loads.EXACTLY_ONE, settings(0, 200))
                .print("a few shops, every load 1");
        assertThat(truth.coverage()).isBetween(0.80, 0.98);
        assertThat(truth.falseDiscoveries()).isLessThanOrEqualTo(0.34);
    }

    @Tag("proof")
    @ParameterizedTest
    @CsvSource({"labelled, 0.0", "'60 % of tickets logged whole', 0.6", "every ticket logged whole, 1.0"})
    void nineRangesInTenHoldTheTrueLoad(String name, double wholeTickets) {
        VerdictTruth truth = VerdictTruth.of(FROM, seeds(400), wholeTickets, Loads.SPREAD, settings(0.05, 2))
                .print(name);
        assertThat(truth.coverage()).isBetween(0.88, 0.92);
    }

    @Tag("proof")
    @Test
    void whereEveryQuoteIsRightFewShopsGetAFlag() {
        VerdictTruth truth = VerdictTruth.of(FROM, seeds(1_000), 0.6, Loads.EXACTLY_ONE, settings(0, 2_000))
                .print("every load exactly 1");
        assertThat(truth.falseDiscoveries()).isLessThanOrEqualTo(0.12);
    }

    @Tag("proof")
    @Test
    void whereHalfTheQuotesAreAFifthTooLowMostAreFoundAndFewFlagsAreFalse() {
        VerdictTruth truth = VerdictTruth.of(FROM, seeds(200), 0.6, Loads.HALF_AT_ONE_AND_A_QUARTER, settings(0, 2_000))
                .print("half the loads 1.25");
        assertThat(truth.falseDiscoveries()).isLessThanOrEqualTo(0.10);
        assertThat(truth.power()).isGreaterThanOrEqualTo(0.85);
    }

    private static int seeds(int all) {
        return (int) StrictMath.max(1, StrictMath.rint(all * SHARE));
    }

    private static Settings settings(double tolerance, int resamples) {
        Settings d = Settings.DEFAULTS;
        return new Settings(
                d.currency(),
                d.zone(),
                d.locale(),
                d.shopRate(),
                d.burden(),
                tolerance,
                d.materiality(),
                d.falseDiscovery(),
                resamples,
                d.policy(),
                d.people(),
                d.wallCopy(),
                d.seed());
    }
}
