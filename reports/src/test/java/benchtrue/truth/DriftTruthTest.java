package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.sample.Slowing;
import benchtrue.sample.Tidiness;
import benchtrue.settings.Settings;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What changes with time, against the known truth of whole invented shops. */
class DriftTruthTest {
    private static final Settings SETTINGS = Settings.DEFAULTS;

    @Test
    @Tag("proof")
    void aRepairThatTakesAThirdLongerIsMostlySeenAndFalseAlarmsAreFewerThanOneAYear() {
        SlowingTruth truth = SlowingTruth.of(
                        SeedTable.of("slowing-as-sampled", 1, 100), SETTINGS, options -> options.with(Slowing.SLIGHT))
                .print("one of 33 types slower by 1.3 after 26 months, as sampled");
        assertThat(truth.falseAlarmsAYear()).isLessThan(1);
        assertThat(truth.signalled()).isGreaterThan(0.6);
    }

    @Test
    @Tag("proof")
    void whereEveryLineIsNamedTheSlowerRepairIsSeenNearlyAlways() {
        SlowingTruth truth = SlowingTruth.of(
                        SeedTable.of("slowing-named", 1, 60),
                        SETTINGS,
                        options ->
                                options.with(Tidiness.TIDY).with(Slowing.SLIGHT).withWholeTicketShare(0))
                .print("the same, every line named");
        assertThat(truth.falseAlarmsAYear()).isLessThan(1);
        assertThat(truth.signalled()).isGreaterThan(0.95);
    }

    @Test
    @Tag("proof")
    void leavingOpenJobsOutMakesTheUsualJobOfAYoungShopTooShortAndCountingThemMendsIt() {
        OpenJobsTruth truth = OpenJobsTruth.of(
                        SeedTable.of("open-jobs", 1, 200),
                        SETTINGS,
                        options -> options.with(Tidiness.TIDY)
                                .with(Slowing.NONE)
                                .withWholeTicketShare(0)
                                .withYears(1)
                                .withTickets(300))
                .print("young shops of 300 tickets, every line named");
        assertThat(truth.without()).isLessThan(-0.003);
        assertThat(StrictMath.abs(truth.with())).isLessThan(0.5 * StrictMath.abs(truth.without()));
    }
}
