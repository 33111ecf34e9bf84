package benchtrue.sample;

/**
 * What is true of one repair type in one invented shop. "Judged lines" are its closed, accepted lines of charge kind
 * {@code repair}, not quoted by time, that do not put earlier work right. Their quote is the first accepted one (the
 * book's hours where none was given) × today's book ÷ the book on the day of the quote.
 *
 * @param repairType its key
 * @param lines judged lines
 * @param quotedHours sum of their quotes, re-based on today's book
 * @param expectedHours sum of their expected hours, given class, traits, technician, condition seen and date
 * @param expectedReworkHours expected hours of the lines that put such lines right for reasons of the shop's own
 * @param loggedHours sum of the hours logged for them, whatever the label
 * @param reworkHours hours logged on closed lines that put such lines right for reasons of the shop's own
 * @param unquotedHours hours logged for the type on tickets that never quoted it
 * @param trueLoad expected hours, rework included, ÷ quoted hours under the shop's mix of classes, traits, technicians and
 *     writers, whatever visits it happened to have: what the load factor's interval is for; see {@link TrueLoads}
 * @param expectedFactor the same over the visits it did have: {@code (expectedHours + expectedReworkHours) /
 *     quotedHours}; NaN without lines
 * @param realisedFactor logged ÷ quoted hours; NaN without lines
 * @param typicalFactor exp of the mean log of hours ÷ quote that the generator expects; NaN without lines
 * @param sd standard deviation of the log of a line's hours, all but chance being known
 */
public record TypeTruth(
        String repairType,
        int lines,
        double quotedHours,
        double expectedHours,
        double expectedReworkHours,
        double loggedHours,
        double reworkHours,
        double unquotedHours,
        double trueLoad,
        double expectedFactor,
        double realisedFactor,
        double typicalFactor,
        double sd) {}
