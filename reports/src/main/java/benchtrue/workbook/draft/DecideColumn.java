package benchtrue.workbook.draft;

import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Heading;

/** The columns of the sheet on which the owner decides, in order; the letter follows from the place. */
public enum DecideColumn {
    REPAIR("Repair", 24, CellStyles.Kind.WRAPPED),
    JOBS("Jobs", 6, CellStyles.Kind.COUNT),
    LOAD("Hours per quoted hour", 8, CellStyles.Kind.RATIO),
    LOWER("at least (90 % sure)", 7, CellStyles.Kind.RATIO),
    UPPER("at most (90 % sure)", 7, CellStyles.Kind.RATIO),
    CHANCE("Chance that the book is too short (1 to 99 %)", 8, CellStyles.Kind.SHARE),
    VERDICT("Verdict", 12, CellStyles.Kind.NOTE),
    STANDING("Sure, leans or stays", 8, CellStyles.Kind.NOTE),
    HOURS("Hours in the book", 8, CellStyles.Kind.HOURS),
    PRICE("Price in the book", 9, CellStyles.Kind.MONEY),
    PROPOSED("Proposed hours", 9, CellStyles.Kind.HOURS),
    TAKE_PRICE("Price if taken", 9, CellStyles.Kind.MONEY),
    TAKE_EFFECT("Money a year if taken", 9, CellStyles.Kind.WHOLE_MONEY),
    WHY("On what it stands, and why held", 46, CellStyles.Kind.NOTE),
    DECISION("Decision: take, keep or own", 10, CellStyles.Kind.ENTRY),
    OWN_HOURS("Own hours", 8, CellStyles.Kind.ENTRY_HOURS),
    REASON("Reason (needed to keep)", 20, CellStyles.Kind.ENTRY),
    UNTIL("Keep until (date)", 11, CellStyles.Kind.ENTRY_DATE),
    NEW_HOURS("New hours", 8, CellStyles.Kind.HOURS),
    NEW_PRICE("New price", 9, CellStyles.Kind.MONEY),
    EFFECT("Money a year", 9, CellStyles.Kind.WHOLE_MONEY),
    CHANGE("Change in hours", 8, CellStyles.Kind.CHANGE),
    FIT_TODAY("Jobs that fit today's hours", 9, CellStyles.Kind.SHARE),
    FIT_NEW("Jobs that fit the new hours", 9, CellStyles.Kind.SHARE),
    KEY("In the price book as", 18, CellStyles.Kind.NOTE),
    FAMILY("Family", 11, CellStyles.Kind.NOTE),
    ASKED("Asked for by your policy (h)", 9, CellStyles.Kind.HOURS),
    SIMPLER("The simpler method, hours per book hour", 9, CellStyles.Kind.RATIO),
    MEAN("Average, hours per book hour", 9, CellStyles.Kind.RATIO),
    FIT("Your share of jobs fits, hours per book hour", 9, CellStyles.Kind.RATIO),
    BY_POLICY("By your policy, hours per book hour", 9, CellStyles.Kind.RATIO),
    LEVEL("No change, hours per book hour", 9, CellStyles.Kind.RATIO),
    SURE_DOWN("Below that, may be too low by", 9, CellStyles.Kind.RATIO),
    SURE_UP("Above that, may be too high by", 9, CellStyles.Kind.RATIO),
    LOWEST("Lowest in one step (h)", 9, CellStyles.Kind.HOURS),
    HIGHEST("Highest in one step (h)", 9, CellStyles.Kind.HOURS),
    SHORTENING("May be shortened", 11, CellStyles.Kind.NOTE),
    LEAST_PRICE("Minimum charge", 9, CellStyles.Kind.MONEY),
    YEARLY("Jobs a year", 8, CellStyles.Kind.HOURS),
    CLIPPED("Asked for, within the step (h)", 9, CellStyles.Kind.HOURS),
    GRID("Rounded to (h)", 8, CellStyles.Kind.HOURS),
    NEAREST("Nearest (h)", 8, CellStyles.Kind.HOURS),
    INSIDE("Nearest within the step (h)", 9, CellStyles.Kind.HOURS);

    /** The last column that is printed; what follows is the working. */
    static final DecideColumn LAST_PRINTED = NEW_PRICE;

    private final Heading heading;
    private final CellStyles.Kind kind;

    DecideColumn(String words, int width, CellStyles.Kind kind) {
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

    CellStyles.Kind kind() {
        return kind;
    }

    String letter() {
        return org.apache.poi.ss.util.CellReference.convertNumToColString(ordinal());
    }
}
