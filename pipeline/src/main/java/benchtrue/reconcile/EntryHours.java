package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.TextColumn;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.shop.Absent;
import java.math.BigDecimal;
import java.time.ZoneId;

/** The seconds of an entry: as stated, else from start to end. */
final class EntryHours {
    static final long DAY = 86_400;

    /** Longest stretch that is believed to run over midnight. */
    private static final long LONGEST_NIGHT = DAY / 2;

    private static final long MINUTE = 60;
    private final TableRows rows;
    private final ClockChanges changes;
    private final EntrySpans spans;
    private final TextColumn hours;
    private final TextColumn starts;
    private final TextColumn ends;

    EntryHours(TableRows rows, ZoneId zone, EntrySpans spans) {
        this.rows = rows;
        this.spans = spans;
        changes = new ClockChanges(zone);
        hours = rows.column(TimeColumn.HOURS);
        starts = rows.column(TimeColumn.START);
        ends = rows.column(TimeColumn.END);
    }

    /** Returns the seconds of an entry, or absent where no number can be read. */
    long seconds(int row) {
        return isStated(row) ? hours.valueAt(row) : span(row);
    }

    /** Returns what rounding to whole seconds added. */
    BigDecimal rounding(int row) {
        return hours.rounding(hours.code(row));
    }

    private boolean isStated(int row) {
        return hours.code(row) != 0;
    }

    /** Returns the moment at which a clocked stretch began, in seconds since 1970-01-01. */
    long moment(int row) {
        return changes.moment(rows.day(TimeColumn.WORK_DATE, row), start(row));
    }

    private long start(int row) {
        return starts.valueAt(row);
    }

    /** Returns the seconds that passed from start to end, or absent where one is missing or the end lies before the start. */
    long span(int row) {
        long shown = shown(row);
        int day = rows.day(TimeColumn.WORK_DATE, row);
        if (!Absent.has(shown) || !Absent.has(day)) {
            return shown;
        }
        long passed = changes.moment(day, start(row) + shown) - changes.moment(day, start(row));
        return passed < 0 ? shown : passed;
    }

    /** Returns the seconds between start and end as a clock shows them that is never changed, or absent. */
    private long shown(int row) {
        long start = start(row);
        long end = ends.valueAt(row);
        if (!Absent.has(start) || !Absent.has(end)) {
            return Absent.AMOUNT;
        }
        long span = end >= start ? end - start : end - start + DAY;
        return end < start && span > LONGEST_NIGHT ? Absent.AMOUNT : span;
    }

    /** Returns whether the seconds are those between start and end, so that overlaps can be seen. */
    boolean isClocked(int row) {
        long span = span(row);
        return Absent.has(span) && seconds(row) == span;
    }

    /** Sets an entry aside whose hours can't be used, and lists it where they are odd. */
    void check(RowDispositions table, int row) {
        long seconds = seconds(row);
        if (!Absent.has(seconds)) {
            if (!isStated(row)) {
                refuseClock(table, row);
            }
            return;
        }
        if (Math.abs(seconds) > spans.most(row)) {
            table.setAside(
                    row,
                    TimeColumn.HOURS,
                    hours.text(hours.code(row)),
                    "at most " + spans.most(row) / 3_600 + " hours in one entry");
        }
        long span = span(row);
        if (Absent.has(span) && isStated(row) && Math.abs(span - seconds) >= MINUTE) {
            table.doubt(Doubt.HOURS_AGAINST_CLOCK, row);
        } else if (!Absent.has(span) && Absent.has(start(row)) && Absent.has(ends.valueAt(row))) {
            table.doubt(Doubt.END_BEFORE_START, row);
        } else if (Absent.has(span) && ends.valueAt(row) < start(row)) {
            table.doubt(Doubt.OVER_MIDNIGHT, row);
        }
        if (Absent.has(span) && span != shown(row)) {
            table.doubt(Doubt.CLOCKS_CHANGED, row);
        }
    }

    private void refuseClock(RowDispositions table, int row) {
        boolean start = starts.code(row) != 0;
        boolean end = ends.code(row) != 0;
        if (start && end && Absent.has(start(row)) && Absent.has(ends.valueAt(row))) {
            table.setAside(
                    row,
                    TimeColumn.END,
                    ends.text(ends.code(row)),
                    "a time after the start, or at most 12 hours after it over midnight");
        } else if (start != end) {
            table.setAside(row, start ? TimeColumn.END : TimeColumn.START, "", "both start and end, or hours");
        } else if (!start) {
            table.setAside(row, TimeColumn.HOURS, "", "hours, or start and end");
        }
    }
}
