package benchtrue.hours;

/**
 * What the split of unlabelled hours rests on, so that a reader can be told.
 *
 * @param quoteSlope how far hours follow a quote away from the book: 0 not at all, 1 wholly
 * @param visitHours bench hours of a visit whatever is done, estimated where time is logged to tickets as a whole; 0 where
 *     the records do not support any
 * @param namedRest of what a line with named hours still lacks of its expectation, the part that is looked for in its
 *     ticket's other time: near 0 where technicians name a line with all of its hours or not at all
 * @param loggedLines judged lines whose hours are known outright
 * @param splitLines judged lines with hours that were split
 */
public record SplitBasis(double quoteSlope, double visitHours, double namedRest, int loggedLines, int splitLines) {}
