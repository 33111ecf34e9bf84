package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopSettings;
import benchtrue.sample.Loads;
import benchtrue.settings.Settings;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Verdicts against the known truth of invented shops of 1,200 tickets. */
class VerdictTruthTest {
    @Test
    void aFewShopsRangesHoldTheTrueLoadAndFlagsAreTrue() {
        VerdictTruth truth = VerdictTruth.of(
                        SeedTable.of("few-exactly-one", 1, 3),
                        settings(0, 200),
                        VerdictTruth.shop(0.6, Loads.EXACTLY_ONE))
                .print("a few shops, every load 1");
        assertThat(truth.coverage()).isBetween(0.80, 0.98);
        assertThat(truth.falseDiscoveries()).isLessThanOrEqualTo(0.34);
    }

    @Tag("proof")
    @ParameterizedTest
    @CsvSource({"every line named, 0.0", "60 % of tickets logged whole, 0.6", "every ticket logged whole, 1.0"})
    void nineRangesInTenHoldTheTrueLoad(String name, double wholeTickets) {
        VerdictTruth truth = VerdictTruth.of(
                        SeedTable.of("ranges-" + wholeTickets, 1, 400),
                        settings(0.05, 2),
                        VerdictTruth.shop(wholeTickets, Loads.SPREAD))
                .print(name);
        assertThat(truth.coverage()).isBetween(0.88, 0.92);
    }

    @Tag("proof")
    @Test
    void whereEveryQuoteIsRightFewShopsGetAFlag() {
        VerdictTruth truth = VerdictTruth.of(
                        SeedTable.of("exactly-one", 1, 1_000),
                        settings(0, 2_000),
                        VerdictTruth.shop(0.6, Loads.EXACTLY_ONE))
                .print("every load exactly 1");
        assertThat(truth.falseDiscoveries()).isLessThanOrEqualTo(0.12);
    }

    @Tag("proof")
    @Test
    void whereHalfTheQuotesAreAFifthTooLowMostAreFoundAndFewFlagsAreFalse() {
        VerdictTruth truth = VerdictTruth.of(
                        SeedTable.of("half-at-1.25", 1, 200),
                        settings(0, 2_000),
                        VerdictTruth.shop(0.6, Loads.HALF_AT_ONE_AND_A_QUARTER))
                .print("half the loads 1.25");
        assertThat(truth.falseDiscoveries()).isLessThanOrEqualTo(0.10);
        assertThat(truth.power()).isGreaterThanOrEqualTo(0.85);
    }

    @Tag("proof")
    @ParameterizedTest
    @CsvSource({"every line named, 0.0", "60 % of tickets logged whole, 0.6"})
    void whereHalfTheQuotesAreAnEighthTooLowThirtyLinesFindMany(String name, double wholeTickets) {
        VerdictTruth truth = VerdictTruth.of(
                        SeedTable.of("half-at-1.15-" + wholeTickets, 1, 100),
                        settings(0, 2_000),
                        options -> VerdictTruth.shop(wholeTickets, Loads.HALF_AT_ONE_AND_FIFTEEN_HUNDREDTHS)
                                .apply(options)
                                .withTickets(1_000))
                .print("half the loads 1.15, 1,000 tickets, " + name);
        assertThat(truth.falseDiscoveries()).isLessThanOrEqualTo(0.10);
        assertThat(truth.powerAtThirtyLines()).isGreaterThanOrEqualTo(0.25);
    }

    private static Settings settings(double tolerance, int resamples) {
        return new ShopSettings().tolerance(tolerance).resamples(resamples).build();
    }
}
