package benchtrue.findings;

/**
 * A trait of the instrument that changes how long a family of repairs takes: a candidate for a surcharge line in the book.
 *
 * @param family family of repairs
 * @param jobsWith finished jobs of the family with it
 * @param jobsWithout finished jobs of the family without it
 * @param factor hours with it over hours without it, all else alike
 * @param lower lower end of its 90 % interval
 * @param upper upper end
 * @param adjustedP Benjamini-Hochberg adjusted p against "makes no difference", over all traits and families
 * @param extraHours extra hours a job
 * @param extraLower lower end of their 90 % interval
 * @param extraUpper upper end
 */
public record Driver(
        String family,
        String trait,
        int jobsWith,
        int jobsWithout,
        double factor,
        double lower,
        double upper,
        double adjustedP,
        double extraHours,
        double extraLower,
        double extraUpper) {}
