package benchtrue.workbook;

/** The columns of the sheet on which the owner decides, in order; the letter follows from the place. */
enum DecideColumn {
    REPAIR("Repair", 24, Look.Kind.WRAPPED),
    JOBS("Jobs", 6, Look.Kind.COUNT),
    LOAD("Hours per quoted hour", 8, Look.Kind.RATIO),
    HOURS("Today's hours", 8, Look.Kind.HOURS),
    PRICE("Today's price", 9, Look.Kind.MONEY),
    PROPOSED("Proposed hours", 9, Look.Kind.HOURS),
    TAKE_PRICE("Price if taken", 9, Look.Kind.MONEY),
    TAKE_EFFECT("Money a year if taken", 9, Look.Kind.WHOLE_MONEY),
    WHY("On what it stands, and why held", 46, Look.Kind.NOTE),
    DECISION("Decision: take, keep or own", 10, Look.Kind.ENTRY),
    OWN_HOURS("Own hours", 8, Look.Kind.ENTRY_HOURS),
    REASON("Reason (needed to keep)", 20, Look.Kind.ENTRY),
    UNTIL("Keep until (date)", 11, Look.Kind.ENTRY_DATE),
    NEW_HOURS("New hours", 8, Look.Kind.HOURS),
    NEW_PRICE("New price", 9, Look.Kind.MONEY),
    EFFECT("Money a year", 9, Look.Kind.WHOLE_MONEY),
    CHANGE("Change in hours", 8, Look.Kind.CHANGE),
    FIT_TODAY("Jobs that fit today's hours", 9, Look.Kind.SHARE),
    FIT_NEW("Jobs that fit the new hours", 9, Look.Kind.SHARE),
    KEY("In the price book as", 18, Look.Kind.NOTE),
    FAMILY("Family", 11, Look.Kind.NOTE),
    ASKED("Asked for by your policy (h)", 9, Look.Kind.HOURS),
    MEAN("Average, hours per book hour", 9, Look.Kind.RATIO),
    USUAL("Usual job, hours per book hour", 9, Look.Kind.RATIO),
    SPREAD("Spread (of the logarithm)", 9, Look.Kind.RATIO),
    LOWEST("Lowest in one step (h)", 9, Look.Kind.HOURS),
    HIGHEST("Highest in one step (h)", 9, Look.Kind.HOURS),
    SHORTENING("May be shortened", 11, Look.Kind.NOTE),
    LEAST_PRICE("Minimum charge", 9, Look.Kind.MONEY),
    YEARLY("Jobs a year", 8, Look.Kind.HOURS),
    CLIPPED("Asked for, within the step (h)", 9, Look.Kind.HOURS),
    GRID("Rounded to (h)", 8, Look.Kind.HOURS),
    NEAREST("Nearest (h)", 8, Look.Kind.HOURS),
    INSIDE("Nearest within the step (h)", 9, Look.Kind.HOURS);

    /** The last column that is printed; what follows is the working. */
    static final DecideColumn LAST_PRINTED = NEW_PRICE;

    private final Heading heading;
    private final Look.Kind kind;

    DecideColumn(String words, int width, Look.Kind kind) {
        this.heading = switch (kind) {
            case WRAPPED -> Heading.text(words, width);
            case NOTE, ENTRY -> Heading.note(words, width);
            default -> Heading.figure(words, width);
        };
        this.kind = kind;
    }

    Heading heading() {
        return heading;
    }

    Look.Kind kind() {
        return kind;
    }

    String letter() {
        return org.apache.poi.ss.util.CellReference.convertNumToColString(ordinal());
    }
}
