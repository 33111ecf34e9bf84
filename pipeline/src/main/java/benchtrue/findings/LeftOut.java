package benchtrue.findings;

import java.util.Set;

/**
 * What a proposal leaves out since it lies with some jobs of a repair only.
 *
 * @param repairType code of the repair type
 * @param words which jobs, in words
 * @param load load factor of the other jobs over that of all
 * @param lines rows of the jobs that it lies with
 * @param variance what these jobs add to the variance of ln(hours) of one job
 */
public record LeftOut(int repairType, String words, double load, Set<Integer> lines, double variance) {
    /** Share of a spread that stays whatever is left out. */
    private static final double LEAST_SPREAD = 0.5;

    /** Returns what the other jobs of the repair usually take. */
    public UsualJob of(UsualJob all) {
        double square = all.spread() * all.spread();
        double left = StrictMath.max(square * LEAST_SPREAD * LEAST_SPREAD, square - variance);
        return all.atPace(load).withSpread(StrictMath.sqrt(left));
    }
}
