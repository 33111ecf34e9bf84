package benchtrue.tables;

import java.time.LocalDate;

/** Writes numbers and days as ASCII digits into a buffer, each at a place; returns the place behind. */
final class Digits {
    private static final int LAST_YEAR = 9_999;

    private Digits() {}

    /** Writes a whole number of at least 0. */
    static int whole(long number, byte[] into, int at) {
        int end = at + 1;
        for (long rest = number / 10; rest > 0; rest /= 10) {
            end++;
        }
        long rest = number;
        for (int place = end - 1; place >= at; place--) {
            into[place] = (byte) ('0' + rest % 10);
            rest /= 10;
        }
        return end;
    }

    /** Writes a number of at least 0 with leading zeros; {@code unit} is what its first digit counts, a power of ten. */
    static int padded(long number, int unit, byte[] into, int at) {
        int end = at;
        for (int place = unit; place > 0; place /= 10) {
            into[end++] = (byte) ('0' + number / place % 10);
        }
        return end;
    }

    /** Writes a day as ISO 8601 does. */
    static int day(LocalDate day, byte[] into, int at) {
        if (day.getYear() < 0 || day.getYear() > LAST_YEAR) {
            return letters(day.toString(), into, at);
        }
        int end = padded(day.getYear(), 1000, into, at);
        into[end] = '-';
        end = padded(day.getMonthValue(), 10, into, end + 1);
        into[end] = '-';
        return padded(day.getDayOfMonth(), 10, into, end + 1);
    }

    /** Writes letters that are ASCII. */
    static int letters(String ascii, byte[] into, int at) {
        int end = at;
        for (int i = 0; i < ascii.length(); i++) {
            into[end++] = (byte) ascii.charAt(i);
        }
        return end;
    }
}
