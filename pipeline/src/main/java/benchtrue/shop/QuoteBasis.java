package benchtrue.shop;

/** What a quote promises. */
public enum QuoteBasis {
    FIXED,
    ESTIMATE,
    CAP,
    TIME
}
