package benchtrue.findings;

/**
 * Where the money that a repair type loses a year comes from; the parts add up to its annual shortfall. A negative part
 * is a gain. Ten-thousandths.
 *
 * @param repairType code of the repair type
 * @param book jobs take longer than the book says, before they got slower
 * @param quotes quotes were written below the book
 * @param slower jobs take longer than they used to
 * @param rework jobs came back
 */
public record ShortfallParts(int repairType, long book, long quotes, long slower, long rework) {}
