package benchtrue.revision;

import benchtrue.shop.Hours;

/** Hours a price book is written in: tenths below two hours, quarters from there. */
final class HourGrid {
    private static final long TWO_HOURS = 2 * Hours.SECONDS;
    private static final long TENTH = Hours.SECONDS / 10;
    private static final long QUARTER = Hours.SECONDS / 4;

    private HourGrid() {}

    static long nearest(double seconds) {
        long step = step(seconds);
        return (long) StrictMath.rint(seconds / step) * step;
    }

    static long atMost(double seconds) {
        long step = step(seconds);
        return (long) StrictMath.floor(seconds / step) * step;
    }

    static long atLeast(double seconds) {
        long step = step(seconds);
        return (long) StrictMath.ceil(seconds / step) * step;
    }

    private static long step(double seconds) {
        return seconds < TWO_HOURS ? TENTH : QUARTER;
    }
}
