package benchtrue.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DayChancesTest {
    @Test
    void theSumOfTwoDiceTakesItsKnownDays() {
        DayChances die = DayChances.of(1, 2, 3, 4, 5, 6);
        DayChances two = die.plus(die);
        assertThat(two.within(1)).isZero();
        assertThat(two.within(7)).isCloseTo(21 / 36.0, within(1e-12));
        assertThat(two.within(500)).isCloseTo(1, within(1e-12));
        assertThat(two.enough(0.8)).isEqualTo(9);
        assertThat(two.enough(0.99)).isEqualTo(12);
    }

    @Test
    void whatTakesYearsCountsAsTheLongest() {
        DayChances years = DayChances.of(5_000, 3);
        assertThat(years.within(DayChances.MOST - 1)).isCloseTo(0.5, within(1e-12));
        assertThat(years.plus(years).enough(0.9)).isEqualTo(DayChances.MOST);
        assertThat(DayChances.NONE.plus(DayChances.of(4)).enough(0.5)).isEqualTo(4);
    }
}
