package benchtrue.findings;

/**
 * What the shop's records say about one repair type. Ratios are hours per quoted hour against today's book.
 *
 * @param repairType code of the repair type
 * @param lines judged lines
 * @param quotedHours their quoted hours against today's book
 * @param actualSeconds their hours, without rework
 * @param reworkSeconds hours spent putting them right
 * @param loadFactor (actual + rework) / quoted, NaN without lines
 * @param typicalFactor what a customer's job usually does, leaning on similar repairs; NaN without any
 * @param lower lower end of the 90 % interval of the load factor, NaN where too few jobs
 * @param upper upper end
 * @param chanceOver posterior chance that the load factor is above 1, NaN where too few jobs
 * @param adjustedP Benjamini-Hochberg adjusted p of the nearer direction, NaN where too few jobs
 * @param annualShortfall money a year lost (positive) or gained at today's rate and volume, ten-thousandths
 * @param annualShortfallLower lower end of its 90 % interval, absent where too few jobs
 * @param annualShortfallUpper upper end
 * @param verdict what that amounts to
 * @param why one sentence for the owner, with the figures in it
 */
public record RepairFinding(
        int repairType,
        int lines,
        double quotedHours,
        long actualSeconds,
        long reworkSeconds,
        double loadFactor,
        double typicalFactor,
        double lower,
        double upper,
        double chanceOver,
        double adjustedP,
        long annualShortfall,
        long annualShortfallLower,
        long annualShortfallUpper,
        Verdict verdict,
        String why) {

    RepairFinding withWhy(String sentence) {
        return new RepairFinding(
                repairType,
                lines,
                quotedHours,
                actualSeconds,
                reworkSeconds,
                loadFactor,
                typicalFactor,
                lower,
                upper,
                chanceOver,
                adjustedP,
                annualShortfall,
                annualShortfallLower,
                annualShortfallUpper,
                verdict,
                sentence);
    }
}
