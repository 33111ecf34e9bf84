package benchtrue.costing;

/**
 * A line still on the bench.
 *
 * @param line row of the line
 * @param quotedSeconds hours quoted, else those the book allowed; absent without either
 * @param secondsSoFar hours it has taken
 * @param expectedHours hours it will have taken in all, NaN without a quote
 * @param lower hours that 5 % of such jobs stay within
 * @param upper hours that 95 % of them stay within
 * @param chanceOver chance that it takes longer than quoted, NaN without a quote
 */
public record OpenLine(
        int line,
        long quotedSeconds,
        long secondsSoFar,
        double expectedHours,
        double lower,
        double upper,
        double chanceOver) {}
