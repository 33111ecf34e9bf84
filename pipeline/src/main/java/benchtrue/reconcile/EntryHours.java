package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.TimeColumn;
import benchtrue.shop.Absent;

/** The seconds of an entry: as stated, else from start to end. */
final class EntryHours {
    static final long DAY = 86_400;

    /** Longest stretch that is believed to run over midnight. */
    private static final long LONGEST_NIGHT = DAY / 2;

    private static final long MINUTE = 60;
    private final TableRows rows;

    EntryHours(TableRows rows) {
        this.rows = rows;
    }

    /** Returns the seconds of an entry, or absent where no number can be read. */
    long seconds(int row) {
        long stated = stated(row);
        return Absent.has(stated) || isStated(row) ? stated : span(row);
    }

    private long stated(int row) {
        return rows.value(TimeColumn.HOURS, row);
    }

    private boolean isStated(int row) {
        return rows.code(TimeColumn.HOURS, row) != 0;
    }

    /** Returns the second of the day at which the stretch began, or absent. */
    long start(int row) {
        return rows.value(TimeColumn.START, row);
    }

    /** Returns the seconds between start and end, or absent where one is missing or the end lies before the start. */
    long span(int row) {
        long start = start(row);
        long end = rows.value(TimeColumn.END, row);
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
    void check(Sifting table, int row) {
        long seconds = seconds(row);
        if (!Absent.has(seconds)) {
            if (!isStated(row)) {
                refuseClock(table, row);
            }
            return;
        }
        if (Math.abs(seconds) > DAY) {
            table.setAside(row, TimeColumn.HOURS, found(row), "at most 24 hours in one entry");
        }
        long span = span(row);
        if (Absent.has(span) && isStated(row) && Math.abs(span - seconds) >= MINUTE) {
            table.doubt(Doubt.HOURS_AGAINST_CLOCK, row);
        } else if (Absent.has(span) && rows.value(TimeColumn.END, row) < start(row)) {
            table.doubt(Doubt.OVER_MIDNIGHT, row);
        }
    }

    private String found(int row) {
        return rows.text(TimeColumn.HOURS, row);
    }

    private void refuseClock(Sifting table, int row) {
        boolean start = rows.code(TimeColumn.START, row) != 0;
        boolean end = rows.code(TimeColumn.END, row) != 0;
        if (start && end && Absent.has(start(row)) && Absent.has(rows.value(TimeColumn.END, row))) {
            table.setAside(
                    row,
                    TimeColumn.END,
                    rows.text(TimeColumn.END, row),
                    "a time after the start, or at most 12 hours after it over midnight");
        } else if (start != end) {
            table.setAside(row, start ? TimeColumn.END : TimeColumn.START, "", "both start and end, or hours");
        } else if (!start) {
            table.setAside(row, TimeColumn.HOURS, "", "hours, or start and end");
        }
    }
}
