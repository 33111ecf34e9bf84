package benchtrue.intake.columns;

/** What the text of a cell must say. */
public enum Kind {
    /** A key or name, taken as it stands. */
    TEXT("text"),
    /** Keys separated by {@code ;}. */
    KEYS("keys separated by ;"),
    /** Words separated by {@code ;}. */
    WORDS("words separated by ;"),
    /** One of the contract's words. */
    WORD("one of the words the data contract lists"),
    /** A calendar day. */
    DAY("a date such as 2026-03-09"),
    /** A calendar month. */
    MONTH("a month such as 2026-03"),
    /** A year. */
    YEAR("a year such as 1968"),
    /** A whole number, not negative. */
    COUNT("a whole number such as 2"),
    /** Hours, not negative. */
    HOURS("hours such as 1.5 or 1:30"),
    /** Hours that may be taken back. */
    SIGNED_HOURS("hours such as 1.5 or 1:30"),
    /** A time of day. */
    CLOCK("a time of day such as 14:05"),
    /** Money, not negative. */
    MONEY("an amount such as 120.00"),
    /** Money that may be given back. */
    SIGNED_MONEY("an amount such as 120.00"),
    /** A number of parts, negative when they went back on the shelf. */
    QUANTITY("a number such as 2 or 0.5"),
    /** Read past: never kept, never output. */
    PASSED("anything");

    private final String expected;

    Kind(String expected) {
        this.expected = expected;
    }

    /** Returns what is expected, in words for a message. */
    public String expected() {
        return expected;
    }

    /** Returns whether the text itself is the value, so that every text can be read. */
    public boolean isText() {
        return this == TEXT || this == KEYS || this == WORDS;
    }
}
