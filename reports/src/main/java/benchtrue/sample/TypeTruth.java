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
 * @param loggedHours sum of the hours logged for them, whatever the label
 * @param reworkHours hours logged on closed lines that put such lines right for reasons of the shop's own
 * @param unquotedHours hours logged for the type on tickets that never quoted it
 * @param trueLoad expected ÷ quoted hours; NaN without lines
 * @param mixLoad expected ÷ quoted hours under the shop's mix, whatever visits it happened to have; see
 *     {@link MixLoads}
 * @param realisedFactor logged ÷ quoted hours; NaN without lines
 * @param typicalFactor exp of the mean log of hours ÷ quote that the generator expects; NaN without lines
 * @param sd standard deviation of the log of a line's hours, all but chance being known
 */
public record TypeTruth(
        String repairType,
        int lines,
        double quotedHours,
        double expectedHours,
        double loggedHours,
        double reworkHours,
        double unquotedHours,
        double trueLoad,
        double mixLoad,
        double realisedFactor,
        double typicalFactor,
        double sd) {
    /** Returns logged and rework hours ÷ quoted hours: the load factor that perfect records would show. */
    public double realisedWithRework() {
        return (loggedHours + reworkHours) / quotedHours;
    }
}
