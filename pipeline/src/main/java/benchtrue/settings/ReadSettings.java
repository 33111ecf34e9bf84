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
        return new Settings(
                file.text(SettingsKey.CURRENCY, absent.currency(), ReadSettings::currency),
                file.text(SettingsKey.ZONE, absent.zone(), ReadSettings::zone),
                file.text(SettingsKey.LOCALE, absent.locale(), ReadSettings::locale),
                file.amount(SettingsKey.SHOP_RATE, 1, MILLION, absent.shopRate()),
                file.number(SettingsKey.BURDEN, 0, 2, absent.burden()),
                file.number(SettingsKey.TOLERANCE, 0, 0.5, absent.tolerance()),
                file.amount(SettingsKey.MATERIALITY, 0, MILLION, absent.materiality()),
                file.number(SettingsKey.FALSE_DISCOVERY, 0.001, 0.5, absent.falseDiscovery()),
                (int) file.whole(SettingsKey.RESAMPLES, 200, 100_000, absent.resamples()),
                policy(file, absent.policy()),
                file.disclosure(SettingsKey.SHOW_PEOPLE, absent.people()),
                file.disclosure(SettingsKey.WALL_COPY, absent.wallCopy()),
                file.whole(SettingsKey.SEED, 0, 9_000_000_000_000_000_000L, absent.seed()),
                money(file, absent.money()),
                (int) file.whole(SettingsKey.KEEP_RESULTS, 0, 100_000, absent.keepResults()),
                file.number(SettingsKey.MOST_UNREAD_SHARE, 0, 0.5, absent.mostUnreadShare()),
                file.files(),
                file.words(),
                (int) file.whole(SettingsKey.FINISHED_AFTER, 1, 3_650, absent.finishedAfterDays()),
                file.breakdowns());
    }

    private static MoneyRules money(SettingsFile file, MoneyRules absent) {
        double overtimeAfter =
                file.number(SettingsKey.MONEY_OVERTIME_AFTER, 1, 168, Hours.of(absent.overtimeAfterSeconds()));
        return new MoneyRules(
                file.number(SettingsKey.MONEY_OVERTIME_PREMIUM, 0, 2, absent.overtimePremium()),
                Hours.seconds(BigDecimal.valueOf(overtimeAfter)),
                file.number(SettingsKey.MONEY_TARGET_MARGIN, 0, 0.9, absent.targetMargin()),
                file.number(SettingsKey.MONEY_LEAST_LOGGED_SHARE, 0, 1, absent.leastLoggedShare()),
                file.amount(SettingsKey.MONEY_OVERHEAD_RATE, 1, MILLION, absent.overheadRate()));
    }

    private static Policy policy(SettingsFile file, Policy absent) {
        return new Policy(
                file.text(
                        SettingsKey.POLICY_RULE,
                        absent.rule(),
                        word -> Words.parse(Policy.Rule.class, word).orElse(null)),
                file.number(
                        SettingsKey.POLICY_COVERAGE, Policy.LEAST_COVERAGE, Policy.MOST_COVERAGE, absent.coverage()),
                file.number(SettingsKey.POLICY_LARGEST_STEP, 0.01, 1, absent.largestStep()),
                file.amount(
                        SettingsKey.POLICY_PRICE_ROUNDING,
                        Policy.LEAST_ROUNDING,
                        Policy.MOST_ROUNDING,
                        absent.priceRounding()),
                file.text(
                        SettingsKey.POLICY_FALL_BACK,
                        absent.fallBack(),
                        word -> Words.parse(Policy.FallBack.class, word).orElse(null)),
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
