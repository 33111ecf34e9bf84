package benchtrue.sample;

import java.time.DayOfWeek;
import java.time.LocalDate;

/**
 * The technicians' working days: at most eight hours each, Monday to Friday, so that no day or clock time is used twice.
 * Mutable: filled as visits are planned in the order they begin.
 */
final class Bench {
    /** Stands for a day after the end of the history. */
    static final int NEVER = Integer.MAX_VALUE / 2;

    /** Seconds in a working day. */
    static final int FULL_DAY = 8 * 3_600;

    private final int first;
    private final boolean[] open;
    private final int[][] used;

    Bench(World world) {
        this.first = world.history().start();
        this.open = new boolean[History.AS_OF - first + 1];
        for (int i = 0; i < open.length; i++) {
            DayOfWeek day = LocalDate.ofEpochDay(first + i).getDayOfWeek();
            open[i] = day != DayOfWeek.SATURDAY && day != DayOfWeek.SUNDAY;
        }
        this.used = new int[world.staff().technicians().size()][];
    }

    /**
     * A stretch of time kept free.
     *
     * @param day the day, or {@link #NEVER} where it falls after the end of the history
     * @param fromSeconds seconds of that day already taken
     */
    record Slot(int day, int fromSeconds) {}

    /** Takes the first free stretch on one day from {@code earliest} on; at most a full day. */
    Slot take(int technician, int earliest, long seconds) {
        if (used[technician] == null) {
            used[technician] = new int[open.length];
        }
        int[] taken = used[technician];
        for (int i = StrictMath.max(0, earliest - first); i < taken.length; i++) {
            if (open[i] && taken[i] + seconds <= FULL_DAY) {
                int from = taken[i];
                taken[i] += (int) seconds;
                return new Slot(first + i, from);
            }
        }
        return new Slot(NEVER, 0);
    }

    /**
     * A technician's whole day.
     *
     * @param technician who, an index
     * @param day when, {@link #NEVER} where nobody had one
     */
    record Whole(int technician, int day) {}

    /** Takes the first day from {@code earliest} to {@code latest} that some technician has wholly free. */
    Whole takeWhole(int earliest, int latest) {
        for (int day = earliest; day <= latest; day++) {
            for (int technician = 0; technician < used.length; technician++) {
                if (open[day - first] && (used[technician] == null || used[technician][day - first] == 0)) {
                    take(technician, day, FULL_DAY);
                    return new Whole(technician, day);
                }
            }
        }
        return new Whole(0, NEVER);
    }
}
