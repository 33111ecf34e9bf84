package benchtrue.breakdown;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a job can be asked about: a column of the fact table by its plain name. */
public enum Field {
    REPAIR("repair", Kind.TEXT, "title", "the repair, by its title or its key"),
    FAMILY("family", Kind.TEXT, "family", "family of the repair"),
    CLASS("class", Kind.TEXT, "instrument_class", "class of the instrument"),
    TRAITS("traits", Kind.LIST, "traits", "traits of the instrument, such as bound-board"),
    DECADE("decade", Kind.TIME, "built_decade", "decade it was built in, such as 1960"),
    PAYER("payer", Kind.TEXT, "paid_by", "who pays: customer, trade, maker-warranty, goodwill, house"),
    CHARGE("charge", Kind.TEXT, "charge_kind", "what is charged for: repair, package, rush and so on"),
    STATE("state", Kind.TEXT, "state", "closed, open, declined or void; closed where nothing is said of it"),
    YEAR("year", Kind.TIME, "", "year, by the day that --date names"),
    QUARTER("quarter", Kind.TIME, "", "quarter, such as 2026-Q3"),
    MONTH("month", Kind.TIME, "", "month, such as 2026-09"),
    BOOK("book", Kind.TIME, "book_version", "first day of the price book it was quoted by"),
    VERDICT("verdict", Kind.TEXT, "verdict", "the repair's verdict, such as under-quoted"),
    FOUND("found", Kind.TEXT, "found", "yes where it was found and quoted after the visit began"),
    COPIED("copied", Kind.TEXT, "copied", "yes where its hours are likely copied from the quote"),
    OWN_HOURS("own-hours", Kind.TEXT, "own_hours", "yes where none of its hours were dealt from the ticket"),
    COUNTED("counted", Kind.TEXT, "counted", "yes where it counts in the findings"),
    WRITER("writer", Kind.PERSON, "quoted_by", "who wrote the quote; only where figures about people are on"),
    TECHNICIAN("technician", Kind.PERSON, "main_technician", "who worked on it most; only where they are on"),
    TICKET("ticket", Kind.TEXT, "ticket", "the visit's key"),
    OPENED("opened", Kind.DAY, "opened", "first day of the visit"),
    CLOSED("closed", Kind.DAY, "closed", "last day of the visit"),
    QUOTED_ON("quoted-on", Kind.DAY, "quoted_on", "day of the quote"),
    PROMISED("promised", Kind.DAY, "promised", "promised day"),
    FINISHED("finished", Kind.DAY, "finished", "day the bench work was done"),
    QUOTED("quoted", Kind.NUMBER, "quoted_hours", "hours quoted for the job"),
    TAKEN("taken", Kind.NUMBER, "actual_hours", "hours it took"),
    REWORK("rework", Kind.NUMBER, "rework_hours", "hours taken later to put it right"),
    LABOUR("labour", Kind.NUMBER, "labour_revenue", "labour charged"),
    PARTS("parts", Kind.NUMBER, "parts_revenue", "parts charged"),
    MARGIN("margin", Kind.NUMBER, "margin", "what it left"),
    DAYS("days", Kind.NUMBER, "days_in_shop", "days in the shop"),
    WAITED("waited", Kind.NUMBER, "days_waited", "days waited"),
    BUILT("built", Kind.NUMBER, "built_year", "year the instrument was built");

    /** How a field is compared. */
    enum Kind {
        /** Words. */
        TEXT(List.of("=", "!=", "in", "contains")),
        /** Several words, each of which can be asked for. */
        LIST(List.of("=", "!=", "in", "contains")),
        /** A name that is hidden unless the settings show people. */
        PERSON(List.of("=", "!=", "in")),
        /** Years, quarters, months: text in the order of time. */
        TIME(List.of("=", "!=", "<", "<=", ">", ">=", "in")),
        DAY(List.of("=", "!=", "<", "<=", ">", ">=")),
        NUMBER(List.of("=", "!=", "<", "<=", ">", ">="));

        private final List<String> signs;

        Kind(List<String> signs) {
            this.signs = signs;
        }

        List<String> signs() {
            return signs;
        }
    }

    private final String word;
    private final Kind kind;
    private final String column;
    private final String meaning;

    Field(String word, Kind kind, String column, String meaning) {
        this.word = word;
        this.kind = kind;
        this.column = column;
        this.meaning = meaning;
    }

    /** Returns the name that the owner writes. */
    public String word() {
        return word;
    }

    Kind kind() {
        return kind;
    }

    /** Returns the column of {@code lines.csv}; empty where the day that counts tells it. */
    String column() {
        return column;
    }

    /** Returns what it is, in words. */
    public String meaning() {
        return meaning;
    }

    /** Returns whether jobs can be grouped by it. */
    public boolean groups() {
        return kind != Kind.DAY && kind != Kind.NUMBER;
    }

    static Optional<Field> of(String word) {
        return Arrays.stream(values())
                .filter(field -> field.word.equalsIgnoreCase(word.strip()))
                .findFirst();
    }
}
