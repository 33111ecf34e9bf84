package benchtrue.sample;

/** How a quote's hours stand in the exports. */
enum QuoteForm {
    /** One figure. */
    PLAIN,
    /** No figure: the book's hours count. */
    BLANK,
    /** A later figure, with the first one in its own column. */
    FIRST_KEPT,
    /** The older export has the first figure, the newer one what was retyped at pick-up. */
    RETYPED,
    /** The figure of a package whose first line carries it whole. */
    IN_PACKAGE
}
