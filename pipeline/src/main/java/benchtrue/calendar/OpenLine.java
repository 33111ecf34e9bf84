package benchtrue.calendar;

/**
 * A line of an open ticket. Of one whose bench work is finished the hours so far are all.
 *
 * @param line row of the line
 * @param quotedSeconds hours quoted, else those the book allowed; absent without either
 * @param secondsSoFar hours it has taken
 * @param expectedHours hours it will have taken in all, NaN without a quote or for a
 *     charge that takes no bench time
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
