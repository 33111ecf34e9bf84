package benchtrue.shop;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HourlyRateTest {
    @ParameterizedTest
    @CsvSource({
        "1000000, 3600, 1000000",
        "1000000, 7200, 500000",
        "1, 7200, 0",
        "3, 7200, 2",
        "-1000000, 1800, -2000000",
        "1000000, 10800, 333333"
    })
    void anAmountOverHoursIsARateAnHour(long amount, long seconds, long expected) {
        assertThat(Money.anHour(amount, seconds)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"1000000, 0", "-9223372036854775808, 3600"})
    void withoutHoursOrAmountThereIsNoRate(long amount, long seconds) {
        assertThat(Money.anHour(amount, seconds)).isEqualTo(Absent.AMOUNT);
    }
}
