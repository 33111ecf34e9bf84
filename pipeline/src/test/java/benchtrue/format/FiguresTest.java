package benchtrue.format;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.shop.Absent;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FiguresTest {
    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u202f', ' ').replace('\u2212', '-');
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en    | USD | 12,345.60 | $12,346   | 31 Oct 2026
            en-US | USD | 12,345.60 | $12,346   | Oct 31, 2026
            de    | EUR | 12.345,60 | 12.346 €  | 31.10.2026
            de-CH | CHF | 12’345.60 | CHF 12’346 | 31.10.2026
            fr    | EUR | 12 345,60 | 12 346 €  | 31/10/2026
            es    | EUR | 12.345,60 | 12.346 €  | 31/10/2026
            sv    | SEK | 12 345,60 | 12 346 SEK | 2026-10-31
            en    | CAD | 12,345.60 | CAD 12,346 | 31 Oct 2026
            xx    | XXX | 12,345.60 | 12,346    | 2026-10-31
            """)
    void figuresReadAsInTheShopsRegion(String locale, String currency, String number, String money, String date) {
        Figures figures = Figures.of(locale, currency);
        assertThat(plain(figures.number(12_345.6, 2))).isEqualTo(number);
        assertThat(plain(figures.money(123_456_000))).isEqualTo(money);
        assertThat(plain(figures.day(ShopBuilder.day("2026-10-31")))).isEqualTo(date);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "en", "en-US", "en-ZA", "de", "de-AT", "de-CH", "fr", "fr-CA", "es", "es-MX", "it", "nl", "pt", "pt-PT",
                "sv", "da", "nb", "fi", "pl", "cs", "uk", "ru", "ja", "ko", "zh"
            })
    void decimalMarkAndThousandsAgreeWithTheLocaleRepository(String tag) {
        // Outside source: the Unicode Common Locale Data Repository as shipped with the JDK that runs the test.
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.forLanguageTag(tag));
        LocaleStyle style = LocaleStyle.of(tag);
        assertThat(style.decimal().charAt(0)).isEqualTo(symbols.getDecimalSeparator());
        assertThat(plain(style.group())).isEqualTo(plain(Character.toString(symbols.getGroupingSeparator())));
    }

    @Test
    void whatWasNotRecordedIsNeverZero() {
        Figures figures = Figures.of("en", "EUR");
        assertThat(figures.money(Absent.AMOUNT)).isEqualTo(Figures.UNKNOWN);
        assertThat(figures.price(Absent.AMOUNT)).isEqualTo(Figures.UNKNOWN);
        assertThat(figures.hours(Absent.AMOUNT)).isEqualTo(Figures.UNKNOWN);
        assertThat(figures.day(Absent.DAY)).isEqualTo(Figures.UNKNOWN);
        assertThat(figures.percent(Double.NaN)).isEqualTo(Figures.UNKNOWN);
        assertThat(figures.moneyRange(Absent.AMOUNT, 0)).isEqualTo(Figures.UNKNOWN);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1234     | 2981     | €1,200 to €3,000
            1234.56  | 1240.10  | €1,235 to €1,240
            -312     | 955      | -€300 to €1,000
            10       | 10       | about €10
            0        | 0        | about €0
            """)
    void aLossIsRoundedToWhatTheEvidenceBears(double lower, double upper, String range) {
        Figures figures = Figures.of("en", "EUR");
        assertThat(plain(figures.moneyRange(Math.round(lower * 10_000), Math.round(upper * 10_000))))
                .isEqualTo(range);
    }

    @ParameterizedTest
    @CsvSource({"0, €0", "3.4, €3", "84.6, €85", "1234.5, '€1,200'", "98765, '€99,000'"})
    void anEstimateWithoutARangeHasTwoDigits(double amount, String words) {
        assertThat(Figures.of("en", "EUR").aboutMoney(Math.round(amount * 10_000)))
                .isEqualTo("about " + words);
    }

    @Test
    void thingsAreCountedWithTheirWord() {
        Figures figures = Figures.of("de", "EUR");
        assertThat(figures.count(1, "job", "jobs")).isEqualTo("1 job");
        assertThat(figures.count(1_234, "job", "jobs")).isEqualTo("1.234 jobs");
        assertThat(plain(figures.monthOf(ShopBuilder.day("2026-03-31")))).isEqualTo("Mar 2026");
        assertThat(figures.monthOf(Absent.DAY)).isEqualTo(Figures.UNKNOWN);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            EUR | €1,234.50
            JPY | JPY 1,234
            KWD | KWD 1,234.500
            """)
    void pricesCarryTheMinorUnitOfTheCurrency(String currency, String price) {
        assertThat(plain(Figures.of("en", currency).price(12_345_000))).isEqualTo(price);
    }

    @Test
    void hoursShowNoMoreDigitsThanABenchCanTell() {
        Figures figures = Figures.of("en", "EUR");
        assertThat(plain(figures.hours(1.25))).isEqualTo("1.25 h");
        assertThat(plain(figures.hours(12.34))).isEqualTo("12.3 h");
        assertThat(plain(figures.hours(1234.5))).isEqualTo("1,234 h");
    }
}
