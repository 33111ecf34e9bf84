package benchtrue.sample;

/** How the invented shop keeps its records. */
public enum Tidiness {
    /** One price book, one file a table, no dirty rows and none of the less tidy ones. */
    TIDY,
    /** Two price books, overlapping exports, packages, house work and every kind of dirty row. */
    UNTIDY
}
