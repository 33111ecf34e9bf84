package benchtrue.revision;

/**
 * What a proposal stands on, so that a spreadsheet can work it out again under another policy. Factors are hours per hour
 * of today's book; NaN without jobs.
 *
 * @param ownFactor what the shop's policy asks for by the program's own method, before any guard rail
 * @param simplerFactor what the simpler method says that the proposal fell back to; NaN where it did not
 * @param meanFactor what such jobs take on average, putting right included
 * @param fits hours that a share of such jobs stays within
 * @param level hours of the book in force over the book's that the draft stands against: no change
 * @param sureDown what a factor below the level may be too low by: it is raised by that, up to the level
 * @param sureUp what a factor above the level may be too high by: it is lowered by that, down to the level
 * @param jobsAYear jobs a year, in hours quoted over hours of today's book
 * @param lowestSeconds least hours that one revision may go down to: the step's end or the shortest safe hours
 * @param highestSeconds most hours that one revision may go up to
 * @param shortening whether the program may propose fewer hours than today's
 */
public record ProposalInputs(
        double ownFactor,
        double simplerFactor,
        double meanFactor,
        FitCurve fits,
        double level,
        double sureDown,
        double sureUp,
        double jobsAYear,
        long lowestSeconds,
        long highestSeconds,
        Shortening shortening) {

    /** Returns what the proposal stands on. */
    public double askedFactor() {
        return Double.isNaN(simplerFactor) ? ownFactor : simplerFactor;
    }

    /** Whether the program may propose fewer hours, or any change at all. */
    public enum Shortening {
        /** Within the guard rails. */
        MAY,
        /** Hazardous work, or structural or finish work without shortest safe hours: only the owner shortens it. */
        OWNER_ONLY,
        /** Too few jobs, nothing in the book to start from, or kept by the owner: nothing is proposed at all. */
        NO_CHANGE
    }
}
