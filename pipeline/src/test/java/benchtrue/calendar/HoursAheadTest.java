package benchtrue.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoursAheadTest {
    /** Computed with R 4.2 by numeric integration: dlnorm above the hours done, plnorm and qlnorm for the tails. */
    @ParameterizedTest
    @CsvSource({
        // median, sigma, done, mean, variance, 5 %, 95 %, chance over 7 h
        "5, 0.4, 6, 7.9801787088, 3.6994132704, 6.1103832146, 11.7644579985, 0.6171590387",
        "5, 0.4, 0, 5.4164353384, 5.0904223336, 2.5895819713, 9.6540678290, 0.2001233859",
        "2, 0.3, 5, 5.4546847125, 0.2124851271, 5.0230837599, 6.3695744527, 0.0131587371",
        "10, 0.6, 1, 11.9728628313, 62.1065893012, 3.7285373413, 26.8298570472, 0.7239421320",
    })
    void whatIsDoneIsDone(
            double median,
            double sigma,
            double done,
            double mean,
            double variance,
            double lower,
            double upper,
            double chance) {
        HoursAhead ahead = new HoursAhead(StrictMath.log(median), sigma, done);
        assertThat(ahead.mean()).isCloseTo(mean, within(1e-8));
        assertThat(ahead.variance()).isCloseTo(variance, within(1e-5));
        assertThat(ahead.quantile(0.05)).isCloseTo(lower, within(1e-8));
        assertThat(ahead.quantile(0.95)).isCloseTo(upper, within(1e-8));
        assertThat(ahead.chanceOver(7)).isCloseTo(chance, within(1e-9));
    }

    @Test
    void aJobFarBeyondAnythingSeenStillHasAFuture() {
        HoursAhead ahead = new HoursAhead(0, 0.1, 50);
        assertThat(ahead.mean()).isBetween(50.0, 51.0);
        assertThat(ahead.quantile(0.95)).isBetween(ahead.quantile(0.05), 51.0);
        assertThat(ahead.chanceOver(50)).isEqualTo(1);
        assertThat(ahead.chanceOver(55)).isBetween(0.0, 1e-6);
    }
}
