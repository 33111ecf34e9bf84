package benchtrue.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
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
                most_unread_share = 0.02
                finished_after = 21
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
                        new Policy(Policy.Rule.BREAK_EVEN, 0.7, 0.2, 50_000, Policy.FallBack.WHEN_BEATEN),
                        Disclosure.SHOWN,
                        Disclosure.SHOWN,
                        7,
                        new MoneyRules(0.5, 135_000, 0.15, 0.9, 287_500),
                        400,
                        0.02,
                        List.of(),
                        List.of(),
                        21,
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
                "[policy.family]\\nfinish = 1 | 2 | 1 | `\"policy.family.finish\" is 1, expected a section of its own`",
                "[policy.family.finish]\\ncoverge = 0.5 | 2 | 1 | `unknown key \"coverge\" of [policy.family.finish]. Did you mean \"coverage\"?`",
                "[policy.family.finish]\\ncoverage = 0.99 | 2 | 1 | `\"policy.family.finish.coverage\" is 0.99, expected a share from 0.3 to 0.95`",
                "[policy.family.finish]\\nrule = \"most\" | 2 | 1 | `expected \"larger\", \"break-even\" or \"coverage\"`",
                "[policy.family.finish]\\nrate = 0 | 2 | 1 | `expected an amount above 0`",
                "[policy.family.finish]\\nprice_rounding = \"5\" | 2 | 1 | `expected an amount from 0.01 to 1000`",
                "[policy.family.finish]\\n[policy.family.finish.rate] | 2 | 1 | `is a section, expected an amount above 0`",
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
    void aFamilyHasItsOwnValuesAndFollowsTheShopInTheRest() throws IOException {
        Settings read = read("""
                [policy]
                coverage = 0.7
                price_rounding = 5
                [policy.family.structural]
                rule = "break-even"
                rate = 110.5
                [policy.family."finish work"]
                coverage = 0.8
                price_rounding = 10
                """);
        Policy shop = read.policy();
        assertThat(shop.families())
                .extracting(FamilyPolicy::family, FamilyPolicy::line)
                .containsExactly(tuple("finish work", 7), tuple("structural", 4));
        Policy structural = shop.of("structural");
        assertThat(structural.rule()).isEqualTo(Policy.Rule.BREAK_EVEN);
        assertThat(structural.coverage()).isEqualTo(0.7);
        assertThat(structural.priceRounding()).isEqualTo(50_000);
        assertThat(shop.rate("structural", 900_000)).isEqualTo(1_105_000);
        Policy finish = shop.of("finish work");
        assertThat(finish.rule()).isEqualTo(Policy.Rule.LARGER);
        assertThat(finish.coverage()).isEqualTo(0.8);
        assertThat(finish.priceRounding()).isEqualTo(100_000);
        assertThat(shop.rate("finish work", 900_000)).isEqualTo(900_000);
        assertThat(shop.of("setup")).isEqualTo(shop);
        assertThat(read.byKey())
                .containsEntry(
                        "policy.family",
                        Map.of(
                                "finish work", Map.of("coverage", 0.8, "price_rounding", "10.0000"),
                                "structural", Map.of("rule", "break-even", "rate", "110.5000")));
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
        assertThat(read("shop_rate = 95.5\nmateriality = 200\nfinished_after = 21\nmoney.overhead_rate = 30")
                        .byKey())
                .containsOnlyKeys(Arrays.stream(SettingsKey.values())
                        .filter(SettingsKey::single)
                        .map(SettingsKey::path)
                        .toList())
                .containsEntry("shop_rate", "95.5000");
    }
}
