package benchtrue.sample;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.time.LocalDate;
import java.util.Locale;

/** One row of a CSV file under construction (RFC 4180). Mutable, reused from row to row. */
final class Row {
    private static final String[] DAYS = days();
    private static final int FIRST_DAY = (int) LocalDate.of(1985, 1, 1).toEpochDay();

    private final StringBuilder text = new StringBuilder(160);

    private static String[] days() {
        int first = (int) LocalDate.of(1985, 1, 1).toEpochDay();
        String[] days = new String[(int) LocalDate.of(2029, 1, 1).toEpochDay() - first];
        for (int i = 0; i < days.length; i++) {
            days[i] = LocalDate.ofEpochDay(first + i).toString();
        }
        return days;
    }

    Row text(String cell) {
        boolean plain = true;
        for (int i = 0; i < cell.length() && plain; i++) {
            char c = cell.charAt(i);
            plain = c != ',' && c != '"' && c != '\r' && c != '\n';
        }
        if (plain) {
            text.append(cell);
        } else {
            text.append('"').append(cell.replace("\"", "\"\"")).append('"');
        }
        text.append(',');
        return this;
    }

    Row number(long whole) {
        text.append(whole).append(',');
        return this;
    }

    Row blank() {
        text.append(',');
        return this;
    }

    Row blanks(int cells) {
        for (int i = 0; i < cells; i++) {
            blank();
        }
        return this;
    }

    /** Writes a date; nothing where it is absent or after the end of the history. */
    Row day(int day) {
        if (Absent.has(day) && day <= History.AS_OF) {
            text.append(DAYS[day - FIRST_DAY]);
        }
        return blank();
    }

    /** Writes a date whatever it is. */
    Row anyDay(int day) {
        text.append(LocalDate.ofEpochDay(day)).append(',');
        return this;
    }

    /** Writes whole seconds as decimal hours, at hundredths. */
    Row hours(long seconds) {
        if (seconds % 36 != 0) {
            throw new IllegalArgumentException(seconds + " seconds are no hundredths of an hour");
        }
        return hundredths(seconds / 36);
    }

    /** Writes seconds as hours with four decimals. */
    Row exactHours(double seconds) {
        text.append(String.format(Locale.ROOT, "%.4f", seconds / Hours.SECONDS));
        return blank();
    }

    /** Writes cents as currency units. */
    Row cents(long cents) {
        return hundredths(cents);
    }

    private Row hundredths(long hundredths) {
        long size = StrictMath.abs(hundredths);
        if (hundredths < 0) {
            text.append('-');
        }
        text.append(size / 100);
        int rest = (int) (size % 100);
        if (rest != 0) {
            text.append('.').append((char) ('0' + rest / 10));
            if (rest % 10 != 0) {
                text.append((char) ('0' + rest % 10));
            }
        }
        return blank();
    }

    /** Ends the row and returns its text; the row is empty again afterwards. */
    String end() {
        text.setLength(text.length() - 1);
        String row = text.append("\r\n").toString();
        text.setLength(0);
        return row;
    }
}
