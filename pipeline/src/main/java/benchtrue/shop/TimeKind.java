package benchtrue.shop;

/** What a stretch of time was for. */
public enum TimeKind {
    BENCH,
    HANDLING,
    QUOTING,
    SHOP
}
