package benchtrue.intake.cells;

import java.time.LocalDate;

/**
 * A spreadsheet's count of days (ISO/IEC 29500, 18.17.4.1). In the 1900 system day 1 is 1900-01-01 and day 60 a 29 February
 * that never was; in the 1904 system day 0 is 1904-01-01.
 */
public final class SerialDate {
    /** The day that the 1900 system counts and the calendar does not have. */
    public static final int NO_SUCH_DAY = 60;

    private static final LocalDate BEFORE_1900 = LocalDate.of(1899, 12, 30);
    private static final LocalDate FIRST_OF_1904 = LocalDate.of(1904, 1, 1);

    private SerialDate() {}

    /** Returns the day of a serial; not for {@link #NO_SUCH_DAY} of the 1900 system. */
    public static LocalDate of(int serial, DateSystem system) {
        return system == DateSystem.FROM_1904 ? of1904(serial) : of1900(serial);
    }

    /** Returns the day of a serial of the 1900 system; not for {@link #NO_SUCH_DAY}. */
    static LocalDate of1900(int serial) {
        return BEFORE_1900.plusDays(serial < NO_SUCH_DAY ? serial + 1L : serial);
    }

    /** Returns the day of a serial of the 1904 system. */
    public static LocalDate of1904(int serial) {
        return FIRST_OF_1904.plusDays(serial);
    }
}
