package benchtrue.findings;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.shop.Money;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0 EUR",
        "3.4, 3 EUR",
        "84.6, 85 EUR",
        "1234.5, '1,200 EUR'",
        "98765, '99,000 EUR'",
        "-1234, '1,200 EUR'"
    })
    void moneyIsRoundedToWhatTheEvidenceBears(double amount, String words) {
        assertThat(new Figures("EUR").about((long) (amount * Money.UNIT))).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"95, '95'", "97.5, '97.50'", "1250, '1,250'"})
    void anHourlyPriceStandsAsPosted(double amount, String words) {
        assertThat(new Figures("XXX").rate((long) (amount * Money.UNIT))).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"-1234, 5678, '-1,200 to 5,700 EUR'", "-0.2, 41, '0 to 41 EUR'"})
    void aRangeKeepsItsSigns(double from, double to, String words) {
        assertThat(new Figures("EUR").range((long) (from * Money.UNIT), (long) (to * Money.UNIT)))
                .isEqualTo(words);
    }
}
