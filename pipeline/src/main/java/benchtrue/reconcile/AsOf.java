package benchtrue.reconcile;

import java.time.LocalDate;

/**
 * The as-of date.
 *
 * @param day days since 1970-01-01
 */
record AsOf(int day) {
    /** Returns its month as {@code year * 12 + month - 1}. */
    int month() {
        LocalDate date = LocalDate.ofEpochDay(day);
        return date.getYear() * 12 + date.getMonthValue() - 1;
    }
}
