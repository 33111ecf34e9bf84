package benchtrue.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadSettingsTest {
    @TempDir
    Path shop;

    private Settings read(String toml) throws IOException {
        Files.writeString(shop.resolve(ReadSettings.FILE), toml);
        return new ReadSettings().read(shop);
    }

    @Test
    void aShopWithoutSettingsRunsOnTheDefaults() {
        assertThat(new ReadSettings().read(shop)).isEqualTo(Settings.DEFAULTS);
    }

    @Test
    void anEmptyFileMeansTheDefaults() throws IOException {
        assertThat(read("")).isEqualTo(Settings.DEFAULTS);
    }

    @Test
    void everyKeyIsRead() throws IOException {
        Settings read = read("""
                currency = "EUR"
                zone = "Europe/Dublin"
                locale = "de-AT"
                shop_rate = 95.5
                burden = 0.25
                tolerance = 0.1
                materiality = 250
                false_discovery = 0.2
                resamples = 500
                seed = 7
                keep_results = 400
                show_people = true
                wall_copy = true
                [policy]
                rule = "break-even"
                coverage = 0.7
                largest_step = 0.2
                price_rounding = 5
                [money]
                overtime_premium = 0.5
                overtime_after = 37.5
                target_margin = 0.15
                least_logged_share = 0.9
                overhead_rate = 28.75
                """);
        assertThat(read)
                .isEqualTo(new Settings(
                        "EUR",
                        ZoneId.of("Europe/Dublin"),
                        "de-AT",
                        955_000,
                        0.25,
                        0.1,
                        2_500_000,
                        0.2,
                        500,
                        new Policy(Policy.Rule.BREAK_EVEN, 0.7, 0.2, 50_000),
                        Disclosure.SHOWN,
                        Disclosure.SHOWN,
                        7,
                        new MoneyRules(0.5, 135_000, 0.15, 0.9, 287_500),
                        400,
                        List.of()));
    }

    @Test
    void aWholeNumberServesWhereADecimalIsMeant() throws IOException {
        Settings read = read("\uFEFFburden = 1\nshop_rate = 80");
        assertThat(read.burden()).isEqualTo(1.0);
        assertThat(read.shopRate()).isEqualTo(800_000);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "curency = \"EUR\"         | 1 | 1 | `unknown key \"curency\". Did you mean \"currency\"?`",
                "[policy]\\ncoverge = 0.5  | 2 | 1 | `unknown key \"policy.coverge\". Did you mean \"policy.coverage\"?`",
                "[polcy]\\nrule = \"larger\" | 1 | 1 | `unknown key \"polcy\"`",
                "qqqqqqqqqqqqqq = 1        | 1 | 1 | `Known keys: currency, zone`",
                "burden = -0.1             | 1 | 1 | `\"burden\" is -0.1, expected a share from 0 to 2`",
                "burden = nan              | 1 | 1 | `\"burden\" is NaN`",
                "burden = \"30 %\"         | 1 | 1 | `\"burden\" is \"30 %\"`",
                "shop_rate = inf           | 1 | 1 | `\"shop_rate\" is Infinity`",
                "shop_rate = 0             | 1 | 1 | `expected an amount above 0`",
                "shop_rate = 1.00001       | 1 | 1 | `\"shop_rate\" is 1.00001`",
                "seed = 1\\nresamples = 10 | 2 | 1 | `expected a whole number from 200`",
                "seed = 1.5                | 1 | 1 | `\"seed\" is 1.5`",
                "currency = \"EURO\"       | 1 | 1 | `expected an ISO 4217 code`",
                "zone = \"Dublin\"         | 1 | 1 | `expected a time zone`",
                "locale = \"?\"            | 1 | 1 | `expected a language tag`",
                "show_people = \"yes\"     | 1 | 1 | `expected true or false`",
                "policy = 1                | 1 | 1 | `unknown key \"policy\"`",
                "[policy]\\nrule = \"most\" | 2 | 1 | `expected \"larger\", \"break-even\" or \"coverage\"`",
                "shop_rate = 95,50         | 1 | 15 | `not TOML`",
                "seed = 1\\nseed = 2       | 2 | 1 | `not TOML: seed previously defined`",
            })
    void whatCannotBeUsedIsRefusedWithItsPlace(String toml, int line, int column, String words) {
        assertThatThrownBy(() -> read(toml.replace("\\n", "\n")))
                .isInstanceOfSatisfying(
                        Refusal.class, r -> assertThat(r.exitCode()).isEqualTo(ExitCode.SETTINGS))
                .hasMessageStartingWith("shop.toml, line " + line + ", column " + column + ": ")
                .hasMessageContaining(words);
    }

    @Test
    void aFileInAnotherEncodingIsRefused() throws IOException {
        Files.write(shop.resolve(ReadSettings.FILE), new byte[] {'#', (byte) 0xE4, '\n'});
        assertThatThrownBy(() -> new ReadSettings().read(shop))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("not UTF-8");
    }

    @Test
    void theRecordOfARunNamesEveryKey() throws IOException {
        assertThat(read("shop_rate = 95.5\nmoney.overhead_rate = 30").byKey())
                .containsOnlyKeys(Arrays.stream(Key.values()).map(Key::path).toList())
                .containsEntry("shop_rate", "95.5000");
    }
}
