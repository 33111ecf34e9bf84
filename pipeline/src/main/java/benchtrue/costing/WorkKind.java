package benchtrue.costing;

/** What logged time was for, and whether somebody pays for it. */
public enum WorkKind {
    SOLD("sold"),
    OWN_STOCK("own stock"),
    GIVEN("goodwill"),
    SETTLING("free adjustment"),
    PUTTING_RIGHT("putting earlier work right"),
    UNQUOTED("work that was never quoted"),
    WITHOUT_LINE("tickets without an accepted line"),
    HANDLING("handling"),
    QUOTING("quoting"),
    SHOP("shop time");

    private final String words;

    WorkKind(String words) {
        this.words = words;
    }

    /** Returns the kind as a person reads it. */
    public String words() {
        return words;
    }
}
