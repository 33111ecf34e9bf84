package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuoteScoresTest {
    /** Koenker and Bassett 1978; constructed bench hours, COMPUTED with R. The loss at 0.8 is flat from 4.4 to 5.0 h. */
    @ParameterizedTest
    @CsvSource({
        "0.1, 4.0, 0.60",
        "0.5, 4.0, 0.56",
        "0.8, 4.0, 0.53",
        "0.9, 4.0, 0.52",
        "0.8, 4.2, 0.49",
        "0.8, 4.4, 0.47",
        "0.8, 4.7, 0.47",
        "0.8, 5.0, 0.47"
    })
    void pinballLossOfTheBenchHours(double tau, double quote, double expected) {
        assertThat(meanLoss(tau, quote)).isCloseTo(expected, within(1e-12));
    }

    /** Minimisers COMPUTED with R quantreg 5.94. */
    @ParameterizedTest
    @CsvSource({"0.1, 2.1", "0.25, 2.8", "0.5, 3.4", "0.75, 4.4", "0.8, 4.4", "0.9, 5.0"})
    void theQuantileHasTheLeastPinballLoss(double tau, double best) {
        for (double job : BenchHours.JOBS) {
            assertThat(meanLoss(tau, best)).isLessThanOrEqualTo(meanLoss(tau, job) + 1e-12);
        }
    }

    private static double meanLoss(double tau, double quote) {
        return Arrays.stream(BenchHours.JOBS)
                .map(job -> Pinball.loss(job, quote, tau))
                .average()
                .orElseThrow();
    }

    @Test
    void aJobOnTheMarkCostsNothing() {
        assertThat(Pinball.loss(3, 3, 0.6)).isZero();
        assertThat(Pinball.loss(5, 3, 0.6)).isCloseTo(1.2, within(1e-15));
        assertThat(Pinball.loss(1, 3, 0.6)).isCloseTo(0.8, within(1e-15));
    }

    /** Clopper and Pearson 1934; COMPUTED with R 4.2.2 {@code binom.test}. */
    @ParameterizedTest
    @CsvSource({
        "6, 0.262378077, 0.878447742",
        "8, 0.443904538, 0.974789274",
        "2, 0.025210727, 0.556095462",
        "0, 0, 0.30849710781876",
        "10, 0.69150289218124, 1"
    })
    void exactIntervalOfTheCoverageOfTenJobs(int fitting, double low, double high) {
        Coverage coverage = Coverage.of(fitting, 10, 0.95);
        assertThat(coverage.share()).isEqualTo(fitting / 10.0);
        assertThat(coverage.interval().low()).isCloseTo(low, within(1e-9));
        assertThat(coverage.interval().high()).isCloseTo(high, within(1e-9));
    }

    @Test
    void noJobHasNoCoverage() {
        assertThat(Coverage.of(0, 0, 0.9).share()).isNaN();
        assertThat(Coverage.of(0, 0, 0.9).interval()).isEqualTo(Interval.NONE);
        assertThatIllegalArgumentException().isThrownBy(() -> Coverage.of(3, 2, 0.9));
        assertThatIllegalArgumentException().isThrownBy(() -> Coverage.of(-1, 2, 0.9));
    }
}
