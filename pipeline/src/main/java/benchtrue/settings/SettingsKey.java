package benchtrue.settings;

import java.util.Set;

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
            "overhead that a bench hour carries; without it, what last year's bench hours carried"),
    FAMILY_RULE("policy.family.NAME.rule", POLICY_RULE.expected, "what is proposed for the family's repairs"),
    FAMILY_COVERAGE(
            "policy.family.NAME.coverage",
            POLICY_COVERAGE.expected,
            "share of the family's jobs that should fit the quote"),
    FAMILY_RATE("policy.family.NAME.rate", SHOP_RATE.expected, "price of a bench hour where the family's hours change"),
    FAMILY_PRICE_ROUNDING(
            "policy.family.NAME.price_rounding",
            POLICY_PRICE_ROUNDING.expected,
            "the family's prices are rounded to a multiple of this"),
    FILE_NAME(
            "files.name", "a file name, with * for any letters and ? for one", "which files of exports and price-book"),
    FILE_TABLE("files.table", "a table's name", "what the rows are"),
    FILE_ENCODING("files.encoding", "the name of an encoding such as \"windows-1252\"", "how letters are written"),
    FILE_DELIMITER("files.delimiter", "one character or \"tab\"", "what stands between cells"),
    FILE_QUOTE("files.quote", "one character or \"none\"", "what stands around text"),
    FILE_DECIMAL("files.decimal", "\".\" or \",\"", "what stands before decimals"),
    FILE_DATES(
            "files.dates", "\"day-month-year\", \"month-day-year\" or \"year-month-day\"", "order of dates in figures"),
    FILE_HEADER_LINE("files.header_line", "a whole number from 1 to 10000", "line of the column names"),
    FILE_TOTALS_ROW("files.totals_row", "true or false", "whether the last row is a total, which is left out"),
    FILE_SHEET("files.sheet", "a sheet's name or a list of them, with * and ?", "which sheets of a workbook"),
    FILE_EFFECTIVE(
            "files.effective", "a date such as \"2026-01-01\"", "from which day a price list among the exports holds"),
    FILE_FILL_DOWN(
            "files.fill_down",
            "a list of the file's headers",
            "columns whose cell stands once above the rows it holds for"),
    FILE_HOURS(
            "files.hours",
            "\"hours\", \"minutes\", \"hundredths\" or \"hours-minutes\" (1.30 is 1 h 30 min)",
            "what a number for hours counts"),
    FILE_ENTRIES(
            "files.entries",
            "a section with span = \"day\", \"week\" or \"month\"",
            "over which days one entry is a sum"),
    FILE_COLUMNS("files.columns", "canonical column = \"the file's header\"", "which of the file's columns is which"),
    FILE_PATTERNS(
            "files.patterns", "canonical column = a pattern with one group", "which part of a column's texts counts"),
    FILE_UNPIVOT(
            "files.unpivot",
            "a section with header = \"text\", \"date\", \"weekday\" or \"day\", and columns, after or before",
            "columns that hold one entry a cell; \"(column)\" and \"(cell)\" name header and cell"),
    FILE_VALUES(
            "files.values",
            "a section a column, in it \"the file's word\" = \"the contract's word\"",
            "what its words mean"),
    FILE_CONSTANTS("files.constants", "canonical column = \"a text\"", "what holds for every row"),
    BREAKDOWN_TITLE("breakdown.title", "a text", "what the question is called"),
    BREAKDOWN_BY("breakdown.by", "one to three names in square brackets", "what the jobs are grouped by"),
    BREAKDOWN_ACROSS("breakdown.across", "a name", "which name stands across"),
    BREAKDOWN_WHERE("breakdown.where", "conditions in square brackets", "which jobs; all conditions hold together"),
    BREAKDOWN_FROM("breakdown.from", "a day such as \"2026-03-01\" or \"12 months\"", "first day, or how far back"),
    BREAKDOWN_TO("breakdown.to", "a day such as \"2026-06-30\"", "last day"),
    BREAKDOWN_DATE(
            "breakdown.date", "\"quoted\", \"opened\" or \"closed\"", "which day of a job counts; quoted without it"),
    BREAKDOWN_SHOW("breakdown.show", "names of figures in square brackets", "which figures"),
    BREAKDOWN_SORT("breakdown.sort", "a figure, or \"FIGURE rising\"", "the largest first; by name without it"),
    BREAKDOWN_TOP("breakdown.top", "a whole number from 0 to 1000", "how many rows are shown; 0 shows all"),
    BREAKDOWN_PICTURE("breakdown.picture", "true or false", "whether the page and charts have a picture of it");

    private static final Set<String> SINGLE_SECTIONS = Set.of("", "policy", "money");

    private final String path;
    private final String expected;
    private final String meaning;

    SettingsKey(String path, String expected, String meaning) {
        this.path = path;
        this.expected = expected;
        this.meaning = meaning;
    }

    /** Returns the key with its section before the last point. */
    String path() {
        return path;
    }

    /** Returns the section, empty for the top of the file. */
    String section() {
        return path.substring(0, Math.max(0, path.lastIndexOf('.')));
    }

    /** Returns the key within its section. */
    String within() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** Returns whether the key stands at the top or in a section that there is once. */
    boolean single() {
        return SINGLE_SECTIONS.contains(section());
    }

    /** Returns what the key may hold, in words. */
    String expected() {
        return expected;
    }

    String meaning() {
        return meaning;
    }
}
