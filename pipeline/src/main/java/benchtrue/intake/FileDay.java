package benchtrue.intake;

import benchtrue.shop.Absent;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The day that a file's name tells: {@code 2026-10-31}, {@code 20261031}, or the last day of {@code 2026-10}. */
final class FileDay {
    private static final Pattern DATE = Pattern.compile(
            "(?<!\\d)(?:(\\d{4})-(\\d\\d)-(\\d\\d)|(\\d{4})(\\d\\d)(\\d\\d)|(\\d{4})-(\\d\\d))(?![\\d])");

    private FileDay() {}

    /** Returns the last date in a name as days since 1970-01-01, or {@link Absent#DAY}. */
    static int of(String name) {
        int day = Absent.DAY;
        Matcher found = DATE.matcher(name);
        while (found.find()) {
            day = Absent.firstOf(day(found), day);
        }
        return day;
    }

    private static int day(Matcher found) {
        try {
            if (found.group(7) != null) {
                return (int) YearMonth.of(number(found, 7), number(found, 8))
                        .atEndOfMonth()
                        .toEpochDay();
            }
            int first = found.group(1) != null ? 1 : 4;
            return (int) LocalDate.of(number(found, first), number(found, first + 1), number(found, first + 2))
                    .toEpochDay();
        } catch (DateTimeException noDate) {
            return Absent.DAY;
        }
    }

    private static int number(Matcher found, int group) {
        return Integer.parseInt(found.group(group));
    }
}
