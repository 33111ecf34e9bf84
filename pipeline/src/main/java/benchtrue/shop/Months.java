package benchtrue.shop;

import java.time.LocalDate;
import java.time.YearMonth;

/** Months as {@code year * 12 + month - 1}, from days without an object a day. */
public final class Months {
    private static final int FIRST_DAY = (int) LocalDate.of(1900, 1, 1).toEpochDay();
    private static final int LAST_DAY = (int) LocalDate.of(2200, 1, 1).toEpochDay();
    private static final int[] OF_DAY = table();

    private Months() {}

    private static int[] table() {
        int[] months = new int[LAST_DAY - FIRST_DAY];
        LocalDate day = LocalDate.ofEpochDay(FIRST_DAY);
        for (int i = 0; i < months.length; i++, day = day.plusDays(1)) {
            months[i] = day.getYear() * 12 + day.getMonthValue() - 1;
        }
        return months;
    }

    /** Returns {@code year * 12 + month - 1} of a day. */
    public static int of(int day) {
        if (day >= FIRST_DAY && day < LAST_DAY) {
            return OF_DAY[day - FIRST_DAY];
        }
        LocalDate date = LocalDate.ofEpochDay(day);
        return date.getYear() * 12 + date.getMonthValue() - 1;
    }

    public static int year(int month) {
        return Math.floorDiv(month, 12);
    }

    public static YearMonth yearMonth(int month) {
        return YearMonth.of(year(month), Math.floorMod(month, 12) + 1);
    }
}
