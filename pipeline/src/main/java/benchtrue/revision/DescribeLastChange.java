package benchtrue.revision;

import benchtrue.format.Figures;

/** Says in plain words whether the last change of the price book worked. */
final class DescribeLastChange {
    /** Fewer finished jobs since say nothing. */
    private static final int ENOUGH_JOBS = 8;

    private final Figures figures;

    DescribeLastChange(Figures figures) {
        this.figures = figures;
    }

    String tell(ChangedTypes changed, FollowUp all) {
        return "The book of " + figures.day(changed.effective()) + " changed "
                + figures.count(changed.count(), "repair", "repairs") + ". "
                + hours(all.hoursBefore(), all.hoursSince()) + " " + conditions(all)
                + acceptance(all.quotesBefore(), all.quotesSince())
                + " " + money(all);
    }

    private String hours(BookedHours before, BookedHours since) {
        if (since.jobs() < ENOUGH_JOBS || before.jobs() < ENOUGH_JOBS) {
            return "Whether it worked can't be told yet: " + figures.count(since.jobs())
                    + " finished jobs with hours of their own since, " + figures.count(before.jobs()) + " before.";
        }
        return verdict(before, since) + ": jobs took " + range(before) + " hours per book hour before and "
                + range(since) + " since.";
    }

    private String conditions(FollowUp all) {
        return all.conditioned() == 0
                ? ""
                : "Where a line with a condition was changed, " + figures.count(all.following()) + " of "
                        + figures.count(all.conditioned(), "accepted quote", "accepted quotes")
                        + " since are priced by it. ";
    }

    private static String verdict(BookedHours before, BookedHours since) {
        if (!before.apartFrom(since)) {
            return "It can't be told from chance whether the book came nearer to the work";
        }
        return since.distance() < before.distance()
                ? "It worked"
                : "It did not work, the book is further from the work than before";
    }

    private String range(BookedHours hours) {
        return figures.ratio(hours.ratio()) + " (" + figures.ratio(hours.lower()) + " to "
                + figures.ratio(hours.upper()) + ")";
    }

    private String acceptance(Acceptance before, Acceptance since) {
        String shares = "Customers accepted " + share(before) + " before and " + share(since) + " since";
        if (before.smallNumbers() || since.smallNumbers()) {
            return shares + ": too few quotes to compare.";
        }
        return shares + (before.apartFrom(since) ? ", more than chance explains." : ", which chance alone could do.");
    }

    private String share(Acceptance acceptance) {
        return acceptance.quotes() == 0
                ? "none of no quotes"
                : figures.percent(acceptance.share()) + " of " + figures.count(acceptance.quotes()) + " quotes";
    }

    private String money(FollowUp all) {
        return "It changed takings by " + figures.aboutMoney(all.realised()) + " so far; "
                + figures.aboutMoney(all.forecast()) + " was to be expected at the jobs of the year before.";
    }
}
