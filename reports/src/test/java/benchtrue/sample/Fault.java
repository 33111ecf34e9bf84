package benchtrue.sample;

import java.util.Locale;

/** What is planted wrong in an untidy shop's rows. Kinds with a visit of their own change hours that count. */
enum Fault {
    NONE(false),
    UNREADABLE_DATE(false),
    UNREADABLE_HOURS(false),
    UNREADABLE_QUOTE(false),
    UNREADABLE_COST(false),
    UNREADABLE_OPENED(false),
    MISSING_TICKET_KEY(false),
    MISSING_LINE_KEY(false),
    MISSING_TECHNICIAN(false),
    UNKNOWN_TICKET(false),
    NEAR_MISS_TICKET(false),
    LINE_OF_UNKNOWN_TICKET(false),
    PART_OF_UNKNOWN_TICKET(false),
    NEGATIVE_HOURS(false),
    END_BEFORE_START(false),
    WAIT_ENDS_BEFORE_START(false),
    OVER_24_HOURS(false),
    UNKNOWN_REPAIR_TYPE(false),
    FUTURE_DATE(false),
    ZERO_COST_PART(false),
    OUTLYING_QUANTITY(false),
    CANCELLED_PAIR(false),
    DAY_OVER_24_HOURS(true),
    OVERLAPPING_CLOCKS(true),
    NO_WAGE(true),
    AFTER_CLOSE(true),
    BEFORE_OPENED(true),
    UNKNOWN_LINE(true),
    DOUBLE_ENTRY(true),
    FINER_THAN_A_SECOND(true),
    NO_LINES(true),
    ALL_DECLINED(true);

    private final boolean ownVisit;

    Fault(boolean ownVisit) {
        this.ownVisit = ownVisit;
    }

    boolean ownVisit() {
        return ownVisit;
    }

    /** Returns the name used in {@code truth.json}. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
