package benchtrue;

import benchtrue.settings.Disclosure;
import benchtrue.settings.MoneyRules;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;

/** The settings of a shop, or those of one that decided on nothing, with what a test needs otherwise. */
public final class ShopSettings {
    private final Settings from;
    private String currency;
    private String locale;
    private long shopRate;
    private double burden;
    private double tolerance;
    private long materiality;
    private int resamples;
    private Policy policy;
    private Disclosure people;
    private Disclosure wallCopy;
    private MoneyRules money;

    public ShopSettings() {
        this(Settings.DEFAULTS);
    }

    public ShopSettings(Settings from) {
        this.from = from;
        currency = from.currency();
        locale = from.locale();
        shopRate = from.shopRate();
        burden = from.burden();
        tolerance = from.tolerance();
        materiality = from.materiality();
        resamples = from.resamples();
        policy = from.policy();
        people = from.people();
        wallCopy = from.wallCopy();
        money = from.money();
    }

    public ShopSettings currency(String code) {
        currency = code;
        return this;
    }

    public ShopSettings locale(String tag) {
        locale = tag;
        return this;
    }

    public ShopSettings shopRate(long amount) {
        shopRate = amount;
        return this;
    }

    public ShopSettings burden(double share) {
        burden = share;
        return this;
    }

    public ShopSettings tolerance(double share) {
        tolerance = share;
        return this;
    }

    public ShopSettings materiality(long amount) {
        materiality = amount;
        return this;
    }

    public ShopSettings resamples(int times) {
        resamples = times;
        return this;
    }

    public ShopSettings policy(Policy decided) {
        policy = decided;
        return this;
    }

    public ShopSettings people(Disclosure disclosure) {
        people = disclosure;
        return this;
    }

    public ShopSettings wallCopy(Disclosure disclosure) {
        wallCopy = disclosure;
        return this;
    }

    public ShopSettings money(MoneyRules rules) {
        money = rules;
        return this;
    }

    public Settings build() {
        return new Settings(
                currency,
                from.zone(),
                locale,
                shopRate,
                burden,
                tolerance,
                materiality,
                from.falseDiscovery(),
                resamples,
                policy,
                people,
                wallCopy,
                from.seed(),
                money,
                from.keepResults(),
                from.mostUnreadShare(),
                from.files(),
                from.words(),
                from.finishedAfterDays(),
                from.breakdowns());
    }
}
