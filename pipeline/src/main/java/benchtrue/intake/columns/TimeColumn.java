package benchtrue.intake.columns;

import benchtrue.shop.TimeKind;

/** A column of {@code time-log}. */
public enum TimeColumn implements Column {
    ENTRY(Cell.maybe(Kind.TEXT, "the time clock's own key of the entry")),
    TICKET(Cell.maybe(Kind.KEYS, "the ticket worked on; several where one stretch served them all")),
    LINE(Cell.maybe(Kind.TEXT, "the line worked on")),
    REPAIR_TYPE(Cell.maybe(Kind.TEXT, "what was done, where the technician names it rather than a line")),
    TECHNICIAN(Cell.needed(Kind.TEXT, "who did the work")),
    WORK_DATE(Cell.needed(Kind.DAY, "day worked")),
    HOURS(Cell.maybe(Kind.SIGNED_HOURS, "time worked")),
    START(Cell.maybe(Kind.CLOCK, "when the stretch began")),
    END(Cell.maybe(Kind.CLOCK, "when it ended, on the next day where earlier than the start")),
    KIND(Cell.word(TimeKind.values(), Need.OPTIONAL, "what it was for; empty is bench with a ticket, shop without")),
    ENTERED_AT(Cell.maybe(Kind.TEXT, "when it was typed in")),
    NOTE(Cell.maybe(Kind.PASSED, "read past, never output"));

    private final Cell cell;

    TimeColumn(Cell cell) {
        this.cell = cell;
    }

    @Override
    public Cell cell() {
        return cell;
    }
}
