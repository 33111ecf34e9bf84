package benchtrue.findings;

/**
 * What one person's quotes in one family of repairs came to. For planning and training; no ranking, no ground for pay or
 * discipline.
 *
 * @param writer as in the shop's records
 * @param family family of repairs
 * @param jobs judged jobs
 * @param quotedOverBook hours quoted over the book's on the day of the quote
 * @param load hours taken over hours quoted
 * @param lower lower end of its 90 % interval
 * @param upper upper end
 * @param unquotedHours hours of work in the family that the writer's tickets never quoted
 * @param belowBook money a year by which these quotes stand below the book; negative above it, ten-thousandths
 */
public record WriterQuotes(
        String writer,
        String family,
        int jobs,
        double quotedOverBook,
        double load,
        double lower,
        double upper,
        double unquotedHours,
        long belowBook) {}
