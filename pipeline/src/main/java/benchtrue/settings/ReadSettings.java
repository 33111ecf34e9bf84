package benchtrue.settings;

import benchtrue.format.Words;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Currency;
import java.util.IllformedLocaleException;
import java.util.Locale;

/** Reads what the owner decided, from {@code shop.toml}. */
public final class ReadSettings {
    /** The file's name in the shop folder. */
    public static final String FILE = "shop.toml";

    /** The most that an hour may cost, in ten-thousandths. */
    static final long MILLION = 1_000_000 * Money.UNIT;

    /**
     * Returns the settings of a shop folder; the defaults where it has no {@code shop.toml}.
     *
     * @throws Refusal naming line and column, where a key is unknown or its value can't be used
     */
    public Settings read(Path shop) {
        Path file = shop.resolve(FILE);
        if (Files.notExists(file)) {
            return Settings.DEFAULTS;
        }
        if (!Files.isRegularFile(file)) {
            throw new Refusal(ExitCode.SETTINGS, FILE + ": found something that is no file, expected a text file.");
        }
        return settings(SettingsFile.parse(text(file)));
    }

    private static String text(Path file) {
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8);
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new Refusal(ExitCode.SETTINGS, FILE + ": not UTF-8 text. Save it as UTF-8.", e);
        } catch (IOException e) {
            throw new Refusal(ExitCode.SETTINGS, FILE + ": can't be read. Check who may read the file.", e);
        }
    }

    private static Settings settings(SettingsFile file) {
        Settings absent = Settings.DEFAULTS;
        Section top = file.section("");
        return new Settings(
                top.text(SettingsKey.CURRENCY, ReadSettings::currency).orElse(absent.currency()),
                top.text(SettingsKey.ZONE, ReadSettings::zone).orElse(absent.zone()),
                top.text(SettingsKey.LOCALE, ReadSettings::locale).orElse(absent.locale()),
                top.amount(SettingsKey.SHOP_RATE, 1, MILLION).orElse(absent.shopRate()),
                top.number(SettingsKey.BURDEN, 0, 2).orElse(absent.burden()),
                top.number(SettingsKey.TOLERANCE, 0, 0.5).orElse(absent.tolerance()),
                top.amount(SettingsKey.MATERIALITY, 0, MILLION).orElse(absent.materiality()),
                top.number(SettingsKey.FALSE_DISCOVERY, 0.001, 0.5).orElse(absent.falseDiscovery()),
                whole(top, SettingsKey.RESAMPLES, 200, 100_000, absent.resamples()),
                policy(file, absent.policy()),
                top.disclosure(SettingsKey.SHOW_PEOPLE).orElse(absent.people()),
                top.disclosure(SettingsKey.WALL_COPY).orElse(absent.wallCopy()),
                top.whole(SettingsKey.SEED, 0, 9_000_000_000_000_000_000L).orElse(absent.seed()),
                money(file.section("money"), absent.money()),
                whole(top, SettingsKey.KEEP_RESULTS, 0, 100_000, absent.keepResults()),
                top.number(SettingsKey.MOST_UNREAD_SHARE, 0, 0.5).orElse(absent.mostUnreadShare()),
                file.files(),
                file.words(),
                whole(top, SettingsKey.FINISHED_AFTER, 1, 3_650, absent.finishedAfterDays()),
                file.breakdowns());
    }

    private static int whole(Section top, SettingsKey key, int low, int high, int absent) {
        return top.whole(key, low, high).map(Long::intValue).orElse(absent);
    }

    private static MoneyRules money(Section section, MoneyRules absent) {
        double overtimeAfter = section.number(SettingsKey.MONEY_OVERTIME_AFTER, 1, 168)
                .orElse(Hours.of(absent.overtimeAfterSeconds()));
        return new MoneyRules(
                section.number(SettingsKey.MONEY_OVERTIME_PREMIUM, 0, 2).orElse(absent.overtimePremium()),
                Hours.seconds(BigDecimal.valueOf(overtimeAfter)),
                section.number(SettingsKey.MONEY_TARGET_MARGIN, 0, 0.9).orElse(absent.targetMargin()),
                section.number(SettingsKey.MONEY_LEAST_LOGGED_SHARE, 0, 1).orElse(absent.leastLoggedShare()),
                section.amount(SettingsKey.MONEY_OVERHEAD_RATE, 1, MILLION).orElse(absent.overheadRate()));
    }

    private static Policy policy(SettingsFile file, Policy absent) {
        Section section = file.section("policy");
        return new Policy(
                section.text(
                                SettingsKey.POLICY_RULE,
                                word -> Words.parse(Policy.Rule.class, word).orElse(null))
                        .orElse(absent.rule()),
                section.number(SettingsKey.POLICY_COVERAGE, Policy.LEAST_COVERAGE, Policy.MOST_COVERAGE)
                        .orElse(absent.coverage()),
                section.number(SettingsKey.POLICY_LARGEST_STEP, 0.01, 1).orElse(absent.largestStep()),
                section.amount(SettingsKey.POLICY_PRICE_ROUNDING, Policy.LEAST_ROUNDING, Policy.MOST_ROUNDING)
                        .orElse(absent.priceRounding()),
                section.text(
                                SettingsKey.POLICY_FALL_BACK,
                                word -> Words.parse(Policy.FallBack.class, word).orElse(null))
                        .orElse(absent.fallBack()),
                file.families());
    }

    private static String currency(String code) {
        try {
            return Currency.getInstance(code).getCurrencyCode();
        } catch (IllegalArgumentException unknown) {
            return null;
        }
    }

    private static ZoneId zone(String id) {
        try {
            return ZoneId.of(id);
        } catch (DateTimeException unknown) {
            return null;
        }
    }

    private static String locale(String tag) {
        try {
            Locale built = new Locale.Builder().setLanguageTag(tag).build();
            // Of the longer language codes none is a name such as "english", and few have two letters' data.
            boolean known =
                    built.getLanguage().length() == 2 || built.getLanguage().length() == 3;
            return known ? built.toLanguageTag() : null;
        } catch (IllformedLocaleException unknown) {
            return null;
        }
    }
}
