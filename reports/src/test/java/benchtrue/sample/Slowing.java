package benchtrue.sample;

/** How much slower one repair type of the invented shop gets from a known date. */
public enum Slowing {
    /** So much that a shop of 1,200 tickets surely sees it. */
    PLAIN(1.4),
    /** So much that such a shop mostly sees it. */
    SLIGHT(1.3),
    NONE(1);

    private final double factor;

    Slowing(double factor) {
        this.factor = factor;
    }

    /** Returns what the type's hours are multiplied by. */
    double factor() {
        return factor;
    }
}
