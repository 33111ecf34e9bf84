package benchtrue.sample;

/**
 * What is true of one quoted line.
 *
 * @param ticket the ticket's key
 * @param line the line's key
 * @param repairType its repair type
 * @param state {@code void}, {@code declined}, {@code closed} or {@code open}
 * @param judged whether it counts in {@link TypeTruth}
 * @param quotedSeconds first accepted quote; the book's hours where none was given
 * @param rebasedSeconds that quote on today's book
 * @param expectedSeconds expected hours, all but chance being known
 * @param loggedSeconds hours logged for it, whatever the label
 * @param workedSeconds hours it takes in all: more than logged where still open, other than logged where copied
 */
public record LineTruth(
        String ticket,
        int line,
        String repairType,
        String state,
        boolean judged,
        long quotedSeconds,
        double rebasedSeconds,
        double expectedSeconds,
        long loggedSeconds,
        long workedSeconds) {}
