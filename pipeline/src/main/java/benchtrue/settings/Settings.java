package benchtrue.settings;

import benchtrue.format.Figures;
import benchtrue.format.Words;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the owner decided about how the program works. The one place where defaults stand.
 *
 * @param currency ISO 4217 code
 * @param zone the shop's time zone
 * @param locale BCP 47 tag for numbers and dates on page and pictures
 * @param shopRate posted price of a bench hour, or {@link Absent#AMOUNT}: then today's book labour over its hours
 * @param burden payroll on-costs as a share of the wage
 * @param tolerance how far the load factor may stand from 1 before it counts
 * @param materiality money a year below which nothing is called under- or over-quoted, in ten-thousandths, or
 *     {@link Absent#AMOUNT}: then what {@value #MATERIAL_HOURS} posted bench hours cost
 * @param falseDiscovery rate of the Benjamini-Hochberg procedure
 * @param resamples bootstrap resamples
 * @param policy how hours are proposed
 * @param people whether figures about people are computed and shown
 * @param wallCopy whether a review without wages, costs and names is written
 * @param seed of every random draw
 * @param money how the shop reckons its costs
 * @param keepResults how many dated results stay in {@code out}, 0 for all
 * @param mostUnreadShare share of a repair's hours that may be unread before it is not judged
 * @param files how files of the shop's own systems are read, in the owner's order
 * @param words what the files' own words mean, whichever file they stand in
 * @param finishedAfterDays days without work after which a ticket of which nobody wrote the end counts as finished, or
 *     {@link Absent#DAY}: then longer than nearly all pauses that were seen
 * @param breakdowns questions that every night answers, in the owner's order
 */
public record Settings(
        String currency,
        ZoneId zone,
        String locale,
        long shopRate,
        double burden,
        double tolerance,
        long materiality,
        double falseDiscovery,
        int resamples,
        Policy policy,
        Disclosure people,
        Disclosure wallCopy,
        long seed,
        MoneyRules money,
        int keepResults,
        double mostUnreadShare,
        List<FileRule> files,
        List<ValueMap> words,
        int finishedAfterDays,
        List<AskedQuestion> breakdowns) {
    private static final int MATERIAL_HOURS = 2;

    /** Settings of a shop folder without {@code shop.toml}. */
    public static final Settings DEFAULTS = new Settings(
            "XXX",
            ZoneId.of("UTC"),
            "en",
            Absent.AMOUNT,
            0.30,
            0.05,
            Absent.AMOUNT,
            0.10,
            2_000,
            Policy.DEFAULTS,
            Disclosure.HIDDEN,
            Disclosure.HIDDEN,
            1,
            MoneyRules.DEFAULTS,
            0,
            0.05,
            List.of(),
            List.of(),
            Absent.DAY,
            List.of());

    public Settings {
        files = List.copyOf(files);
        words = List.copyOf(words);
        breakdowns = List.copyOf(breakdowns);
    }

    /** Returns figures as this shop's people read them; every sentence, page, picture and sheet uses them. */
    public Figures figures() {
        return Figures.of(locale, currency);
    }

    /** Returns the money a year below which nothing is called under- or over-quoted, where a bench hour costs {@code rate}. */
    public long materiality(long rate) {
        return Absent.firstOf(materiality, MATERIAL_HOURS * rate);
    }

    /** Returns every value by its key in {@code shop.toml}, amounts as text; what was not set is left out. */
    public SortedMap<String, Object> byKey() {
        SortedMap<String, Object> values = new TreeMap<>();
        values.put(SettingsKey.CURRENCY.path(), currency);
        values.put(SettingsKey.ZONE.path(), zone.getId());
        values.put(SettingsKey.LOCALE.path(), locale);
        if (Absent.has(shopRate)) {
            values.put(SettingsKey.SHOP_RATE.path(), Money.text(shopRate));
        }
        values.put(SettingsKey.BURDEN.path(), burden);
        values.put(SettingsKey.TOLERANCE.path(), tolerance);
        if (Absent.has(materiality)) {
            values.put(SettingsKey.MATERIALITY.path(), Money.text(materiality));
        }
        values.put(SettingsKey.FALSE_DISCOVERY.path(), falseDiscovery);
        values.put(SettingsKey.MOST_UNREAD_SHARE.path(), mostUnreadShare);
        if (Absent.has(finishedAfterDays)) {
            values.put(SettingsKey.FINISHED_AFTER.path(), finishedAfterDays);
        }
        values.put(SettingsKey.RESAMPLES.path(), resamples);
        values.put(SettingsKey.SEED.path(), seed);
        values.put(SettingsKey.KEEP_RESULTS.path(), keepResults);
        values.put(SettingsKey.SHOW_PEOPLE.path(), people == Disclosure.SHOWN);
        values.put(SettingsKey.WALL_COPY.path(), wallCopy == Disclosure.SHOWN);
        values.put(SettingsKey.POLICY_RULE.path(), Words.of(policy.rule()));
        values.put(SettingsKey.POLICY_COVERAGE.path(), policy.coverage());
        values.put(SettingsKey.POLICY_LARGEST_STEP.path(), policy.largestStep());
        values.put(SettingsKey.POLICY_PRICE_ROUNDING.path(), Money.text(policy.priceRounding()));
        values.put(SettingsKey.POLICY_FALL_BACK.path(), Words.of(policy.fallBack()));
        if (!policy.families().isEmpty()) {
            SortedMap<String, Object> families = new TreeMap<>();
            policy.families().forEach(family -> families.put(family.family(), family.byKey()));
            values.put(String.join(".", ReadFamilies.SECTION), families);
        }
        values.put(SettingsKey.MONEY_OVERTIME_PREMIUM.path(), money.overtimePremium());
        values.put(SettingsKey.MONEY_OVERTIME_AFTER.path(), Hours.text(money.overtimeAfterSeconds()));
        values.put(SettingsKey.MONEY_TARGET_MARGIN.path(), money.targetMargin());
        values.put(SettingsKey.MONEY_LEAST_LOGGED_SHARE.path(), money.leastLoggedShare());
        if (Absent.has(money.overheadRate())) {
            values.put(SettingsKey.MONEY_OVERHEAD_RATE.path(), Money.text(money.overheadRate()));
        }
        if (!files.isEmpty()) {
            values.put(ReadFileRules.SECTION, files.stream().map(RuleRecord::of).toList());
        }
        if (!words.isEmpty()) {
            values.put(ReadFileRules.WORDS, RuleRecord.maps(words));
        }
        if (!breakdowns.isEmpty()) {
            values.put(
                    ReadBreakdowns.SECTION,
                    breakdowns.stream().map(AskedQuestion::byKey).toList());
        }
        return values;
    }

    /** A rule for files as the record of a run shows it. */
    static final class RuleRecord {
        private final SortedMap<String, Object> values = new TreeMap<>();

        private RuleRecord() {}

        /** Returns what was set, by its key in {@code shop.toml}. */
        static Map<String, Object> of(FileRule rule) {
            RuleRecord record = new RuleRecord();
            record.put(SettingsKey.FILE_NAME, rule.name());
            record.put(SettingsKey.FILE_TABLE, rule.table());
            rule.encoding().ifPresent(charset -> record.put(SettingsKey.FILE_ENCODING, charset.name()));
            rule.delimiter()
                    .ifPresent(mark -> record.put(SettingsKey.FILE_DELIMITER, mark == '\t' ? "tab" : mark.toString()));
            rule.quote()
                    .ifPresent(mark ->
                            record.put(SettingsKey.FILE_QUOTE, mark == FileRule.NO_QUOTE ? "none" : mark.toString()));
            rule.decimal().ifPresent(sign -> record.put(SettingsKey.FILE_DECIMAL, String.valueOf(sign.sign())));
            rule.dates().ifPresent(order -> record.put(SettingsKey.FILE_DATES, Words.of(order)));
            rule.headerLine().ifPresent(line -> record.put(SettingsKey.FILE_HEADER_LINE, line));
            rule.totalsRow().ifPresent(row -> record.put(SettingsKey.FILE_TOTALS_ROW, row == TotalsRow.PRESENT));
            record.putShape(rule.shape());
            rule.hours().ifPresent(unit -> record.put(SettingsKey.FILE_HOURS, Words.of(unit)));
            rule.span()
                    .ifPresent(
                            span -> record.put(SettingsKey.FILE_ENTRIES, Map.of(ReadFileRules.SPAN, Words.of(span))));
            record.putPairs(SettingsKey.FILE_COLUMNS, rule.columns());
            record.putPairs(SettingsKey.FILE_CONSTANTS, rule.constants());
            if (!rule.values().isEmpty()) {
                record.put(SettingsKey.FILE_VALUES, maps(rule.values()));
            }
            return record.values;
        }

        /** Returns words by their column. */
        static SortedMap<String, Object> maps(List<ValueMap> words) {
            SortedMap<String, Object> maps = new TreeMap<>();
            words.forEach(map -> maps.put(map.column(), texts(map.words())));
            return maps;
        }

        private void put(SettingsKey key, Object value) {
            values.put(key.within(), value);
        }

        private void putShape(FileShape shape) {
            if (!shape.sheets().isEmpty()) {
                put(
                        SettingsKey.FILE_SHEET,
                        shape.sheets().size() == 1 ? shape.sheets().get(0) : shape.sheets());
            }
            shape.effective().ifPresent(day -> put(SettingsKey.FILE_EFFECTIVE, day.toString()));
            if (!shape.fillDown().isEmpty()) {
                put(SettingsKey.FILE_FILL_DOWN, shape.fillDown());
            }
            putPairs(SettingsKey.FILE_PATTERNS, shape.patterns());
            shape.unpivot().ifPresent(unpivot -> put(SettingsKey.FILE_UNPIVOT, UnpivotKey.record(unpivot)));
        }

        private void putPairs(SettingsKey key, List<Pair> pairs) {
            if (!pairs.isEmpty()) {
                put(key, texts(pairs));
            }
        }

        private static SortedMap<String, Object> texts(List<Pair> pairs) {
            SortedMap<String, Object> texts = new TreeMap<>();
            pairs.forEach(pair -> texts.put(pair.key(), pair.text()));
            return texts;
        }
    }
}
