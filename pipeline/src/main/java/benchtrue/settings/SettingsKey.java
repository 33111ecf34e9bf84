package benchtrue.settings;

import java.util.List;

/** Every key of {@code shop.toml}, as the owner writes it, with what it may hold and what it is for. */
enum SettingsKey {
    CURRENCY("currency", "an ISO 4217 code such as \"EUR\"", "currency of every amount"),
    ZONE("zone", "a time zone such as \"Europe/Dublin\"", "the shop's time zone; says which day it is"),
    LOCALE("locale", "a language tag such as \"en-IE\"", "how numbers and dates look on the page and in pictures"),
    SHOP_RATE(
            "shop_rate",
            "an amount above 0",
            "posted price of a bench hour; without it, labour over hours of the whole price book"),
    BURDEN(
            "burden",
            "a share from 0 to 2",
            "payroll on-costs (employer taxes, benefits, paid leave) as a share of wages"),
    TOLERANCE("tolerance", "a share from 0 to 0.5", "how far hours per quoted hour may stand from 1 before it counts"),
    MATERIALITY(
            "materiality",
            "an amount from 0 to 1000000",
            "money a year below which no repair is called wrongly quoted; without it, what two bench hours cost"),
    FALSE_DISCOVERY(
            "false_discovery",
            "a share from 0.001 to 0.5",
            "share of the repairs called wrongly quoted that may be chance"),
    MOST_UNREAD_SHARE(
            "most_unread_share",
            "a share from 0 to 0.5",
            "share of a repair's hours that may be unread before it is not judged"),
    FINISHED_AFTER(
            "finished_after",
            "days from 1 to 3650",
            "days without work after which a ticket counts as finished where no file says so; without it, more than nearly"
                    + " all pauses that were seen"),
    RESAMPLES("resamples", "a whole number from 200 to 100000", "how often the evidence is drawn again"),
    SEED("seed", "a whole number from 0 to 9000000000000000000", "start of every random draw"),
    KEEP_RESULTS(
            "keep_results",
            "a whole number from 0 to 100000",
            "how many dated results stay in out, the newest; 0 keeps all"),
    SHOW_PEOPLE("show_people", "true or false", "whether figures about people are computed and shown"),
    WALL_COPY("wall_copy", "true or false", "whether a page without wages, costs and names is written too"),
    POLICY_RULE(
            "policy.rule",
            "\"larger\", \"break-even\" or \"coverage\"",
            "what is proposed: the hours that pay for themselves, those that enough jobs fit, or the larger"),
    POLICY_COVERAGE("policy.coverage", "a share from 0.3 to 0.95", "share of jobs that should fit the quote"),
    POLICY_LARGEST_STEP(
            "policy.largest_step", "a share from 0.01 to 1", "largest change of a repair's hours in one revision"),
    POLICY_PRICE_ROUNDING(
            "policy.price_rounding", "an amount from 0.01 to 1000", "prices are rounded to a multiple of this"),
    POLICY_FALL_BACK(
            "policy.fall_back",
            "\"when-beaten\" or \"never\"",
            "whether a proposal gives way to a simpler method that surely did better on the shop's own past jobs"),
    MONEY_OVERTIME_PREMIUM(
            "money.overtime_premium",
            "a share from 0 to 2",
            "what an overtime hour costs above the wage, as a share of it; local law says when it is due"),
    MONEY_OVERTIME_AFTER(
            "money.overtime_after",
            "hours from 1 to 168",
            "hours a technician logs in a week from Monday before the premium is paid"),
    MONEY_TARGET_MARGIN(
            "money.target_margin", "a share from 0 to 0.9", "share of revenue that should be left after all costs"),
    MONEY_LEAST_LOGGED_SHARE(
            "money.least_logged_share",
            "a share from 0 to 1",
            "share of paid time in the log below which the review opens with it"),
    MONEY_OVERHEAD_RATE(
            "money.overhead_rate",
            "an amount above 0",
            "overhead that a bench hour carries; without it, what last year's bench hours carried");

    private final String path;
    private final String expected;
    private final String meaning;

    SettingsKey(String path, String expected, String meaning) {
        this.path = path;
        this.expected = expected;
        this.meaning = meaning;
    }

    /** Returns the key with its section before a point. */
    String path() {
        return path;
    }

    /** Returns what the key may hold, in words. */
    String expected() {
        return expected;
    }

    /** Returns what the key is for. */
    String meaning() {
        return meaning;
    }

    /** Returns the section and the key in it. */
    List<String> parts() {
        return List.of(path.split("\\."));
    }
}
