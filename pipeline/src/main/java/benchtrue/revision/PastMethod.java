package benchtrue.revision;

/** What hours may be taken from, as tried on past jobs (methods, section 9). */
public enum PastMethod {
    /** What the program proposes, before any guard rail and rounding; in two lines where size of quote matters. */
    PROPOSAL("the proposal"),
    /** The book as it stood. */
    KEEP_THE_BOOK("keeping the book"),
    /** Hours over quoted hours of the last twelve months, repair by repair. */
    PLAIN_AVERAGE("the plain average of the last 12 months"),
    /** The middle job of each repair, whatever similar repairs do. */
    UNPOOLED_MEDIAN("each repair's middle job"),
    /** The proposal with a curve over all sizes of quote in place of two lines. */
    SIZE_CURVE("the proposal by a curve over the size of the quote"),
    /** What would have been written into the book: within the guard rails, rounded, of the method that had done best. */
    POLICY("the proposal within its guard rails");

    private final String words;

    PastMethod(String words) {
        this.words = words;
    }

    /** Returns how it is called in sentences. */
    public String words() {
        return words;
    }

    /**
     * Returns whether the proposal may fall back to it. The middle job may not: half of all jobs take longer, which is neither a
     * share that fits nor what pays for itself.
     */
    boolean standsIn() {
        return this == KEEP_THE_BOOK || this == PLAIN_AVERAGE;
    }

    /** Returns whether it is one that the proposal is held against. */
    public boolean rival() {
        return this == KEEP_THE_BOOK || this == PLAIN_AVERAGE || this == UNPOOLED_MEDIAN;
    }
}
