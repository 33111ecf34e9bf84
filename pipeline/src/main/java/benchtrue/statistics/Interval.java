package benchtrue.statistics;

/**
 * A two-sided interval; both ends are {@code NaN} where the data allow none.
 *
 * @param low lower end, in the unit of the estimate
 * @param high upper end, in the unit of the estimate
 */
public record Interval(double low, double high) {
    static final Interval NONE = new Interval(Double.NaN, Double.NaN);

    static double lowerTail(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("an interval's level must lie between 0 and 1, found " + level);
        }
        return (1 - level) / 2;
    }
}
