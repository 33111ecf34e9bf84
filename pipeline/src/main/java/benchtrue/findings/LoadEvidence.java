package benchtrue.findings;

import benchtrue.statistics.Interval;

/**
 * How surely the load factor of one repair type is known; all NaN where its tickets are too few.
 *
 * @param range 90 % interval of the load factor
 * @param current the same of the newest jobs where the type got slower, else {@code range}
 * @param chanceOver posterior chance that the load factor is above 1, from the flat prior
 * @param underP p-value against "no more than 1 + tolerance": small means surely under-quoted
 * @param overP p-value against "no less than 1 - tolerance": small means surely over-quoted
 */
record LoadEvidence(Interval range, Interval current, double chanceOver, double underP, double overP) {
    private static final Interval UNKNOWN = new Interval(Double.NaN, Double.NaN);
    static final LoadEvidence NONE = new LoadEvidence(UNKNOWN, UNKNOWN, Double.NaN, Double.NaN, Double.NaN);

    /** Returns whether there is any. */
    boolean known() {
        return !Double.isNaN(underP);
    }
}
