package benchtrue.settings;

/** Every key of a {@code [policy.family.NAME]} section, with what it may hold and what it is for. */
enum FamilyKey {
    RULE("rule", SettingsKey.POLICY_RULE.expected(), "what is proposed for the family's repairs"),
    COVERAGE(
            "coverage", SettingsKey.POLICY_COVERAGE.expected(), "share of the family's jobs that should fit the quote"),
    RATE("rate", SettingsKey.SHOP_RATE.expected(), "price of a bench hour where the family's hours change"),
    PRICE_ROUNDING(
            "price_rounding",
            SettingsKey.POLICY_PRICE_ROUNDING.expected(),
            "the family's prices are rounded to a multiple of this");

    private final String path;
    private final String expected;
    private final String meaning;

    FamilyKey(String path, String expected, String meaning) {
        this.path = path;
        this.expected = expected;
        this.meaning = meaning;
    }

    /** Returns the key within its section. */
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
}
