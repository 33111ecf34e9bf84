package benchtrue.findings;

/**
 * Restorations of one group, each judged as a whole: closed tickets with four quoted repairs or more, or above twenty quoted
 * hours.
 *
 * @param by what the group has in common
 * @param group words for it, such as a family's title or "with a bolt-on neck"
 * @param restorations how many
 * @param quotedHours quoted, brought to today's book, found work included
 * @param foundHours of these, quoted on a later day than the visit began
 * @param takenHours taken, brought to today's pace
 * @param load taken over quoted
 * @param lower lower end of its 90 % range; NaN where there are too few
 * @param upper upper end of it
 * @param adjustedP chance to see as much where quotes are right, or where a first sign makes no difference, corrected over all
 *     groups; NaN where there are too few
 * @param standing how the load stands to the quotes, or of a first sign to the load of the others
 */
public record Restorations(
        By by,
        String group,
        int restorations,
        double quotedHours,
        double foundHours,
        double takenHours,
        double load,
        double lower,
        double upper,
        double adjustedP,
        Verdict standing) {
    /** What groups restorations. */
    public enum By {
        /** All of them. */
        ALL("all"),
        /** The family that most of a restoration's quoted hours are of. */
        KIND("mostly"),
        /** The family of the single repair; only restorations in which every repair has hours of its own. */
        STAGE("stage"),
        /** What the first look shows: class, traits, age. */
        FIRST_SIGN("first sign");

        private final String words;

        By(String words) {
            this.words = words;
        }

        /** Returns it as a person reads it. */
        public String words() {
            return words;
        }
    }

    /** Returns what follows, in words. */
    public String told() {
        if (by == By.STAGE && standing == Verdict.TOO_FEW_JOBS) {
            return "can't be told: too few visits have hours of their own for each repair";
        }
        if (by != By.FIRST_SIGN) {
            return standing.words();
        }
        return switch (standing) {
            case UNDER_QUOTED -> "take longer than the others";
            case OVER_QUOTED -> "take less than the others";
            case NOT_JUDGED -> standing.words();
            default -> "not surely other than the others";
        };
    }

    /** Returns whether the group belongs on a page: a first sign only where it surely makes a difference. */
    public boolean worthTelling() {
        return by != By.FIRST_SIGN || standing == Verdict.UNDER_QUOTED || standing == Verdict.OVER_QUOTED;
    }

    /** Returns the share of the quoted hours that was found on the bench. */
    public double foundShare() {
        return foundHours / quotedHours;
    }
}
