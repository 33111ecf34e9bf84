package benchtrue.revision;

/**
 * A line that the next price book could charge wherever a trait stands on the instrument, beside the repair itself.
 *
 * @param family family of repairs that the trait lengthens
 * @param trait the trait
 * @param jobs finished jobs of the family with it
 * @param seconds hours of the line, as a book is written
 * @param labour its price at the shop rate, rounded as prices are
 * @param lowerHours lower end of the 90 % interval of the extra hours a job
 * @param upperHours upper end
 */
public record SurchargeLine(
        String family, String trait, int jobs, long seconds, long labour, double lowerHours, double upperHours) {}
