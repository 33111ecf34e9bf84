package benchtrue.mapping;

/** A share as a person reads it. */
final class Percent {
    private Percent() {}

    /** Returns a share of 1 as a whole percentage that says all or none only where that is so. */
    static String of(double share) {
        long percent = StrictMath.round(100 * share);
        if (share < 1 && percent == 100) {
            percent = 99;
        }
        return share == 1 ? "all" : (share > 0 ? Math.max(1, percent) : 0) + " %";
    }
}
