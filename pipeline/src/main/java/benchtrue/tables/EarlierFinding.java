package benchtrue.tables;

/**
 * A repair type's row in the findings of an earlier result.
 *
 * @param repairType key of the repair type
 * @param lines judged lines
 * @param loadFactor hours per quoted hour, NaN where there was none
 * @param annualShortfall money a year in ten-thousandths, absent where it was not known
 * @param verdict the verdict's words
 */
public record EarlierFinding(String repairType, int lines, double loadFactor, long annualShortfall, String verdict) {}
