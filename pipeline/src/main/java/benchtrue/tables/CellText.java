package benchtrue.tables;

import benchtrue.shop.Absent;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.regex.Pattern;

/** Values as the text of a cell; what is not known is an empty one. */
final class CellText {
    private static final int DECIMALS = 4;
    private static final int RATIO_DECIMALS = 6;

    /** Beyond this a ratio no longer has six decimals to show. */
    private static final double LARGEST_RATIO = 1e9;

    private static final Pattern NUMBER = Pattern.compile("(-?[0-9]+(\\.[0-9]+)?|[0-9]{4}-[0-9]{2}-[0-9]{2})?");

    private CellText() {}

    /**
     * Returns seconds as decimal hours with four decimals. A second is 25/9 of a ten-thousandth of an hour, so nothing ever
     * stands half-way; 9/18 more rounds.
     */
    static String hours(long seconds) {
        return Absent.has(seconds)
                ? decimal(Math.floorDiv(Math.addExact(Math.multiplyExact(seconds, 50), 9), 18), DECIMALS)
                : "";
    }

    /** Returns hours that are a ratio or a sum of ratios, with four decimals. */
    static String hours(double hours) {
        return rounded(hours, DECIMALS);
    }

    /** Returns ten-thousandths as an amount with four decimals. */
    static String money(long tenThousandths) {
        return Absent.has(tenThousandths) ? decimal(tenThousandths, DECIMALS) : "";
    }

    /** Returns a whole number. */
    static String count(long count) {
        return Absent.has(count) ? Long.toString(count) : "";
    }

    /** Returns a ratio, chance or share with six decimals. */
    static String ratio(double ratio) {
        return rounded(ratio, RATIO_DECIMALS);
    }

    /** Returns a day as ISO 8601. */
    static String day(int day) {
        return Absent.has(day) ? LocalDate.ofEpochDay(day).toString() : "";
    }

    /** Returns the year and month of a day as ISO 8601. */
    static String month(int day) {
        return Absent.has(day) ? day(day).substring(0, "yyyy-mm".length()) : "";
    }

    /** Returns a number or day that is text already, or nothing; a minus does not make it something a spreadsheet would run. */
    static String number(String number) {
        if (!NUMBER.matcher(number).matches()) {
            throw new IllegalArgumentException("neither a number nor a day: " + number);
        }
        return number;
    }

    private static String rounded(double value, int decimals) {
        return StrictMath.abs(value) < LARGEST_RATIO
                ? decimal((long) StrictMath.rint(value * (decimals == DECIMALS ? 1e4 : 1e6)), decimals)
                : "";
    }

    private static String decimal(long amount, int decimals) {
        return BigDecimal.valueOf(amount, decimals).toPlainString();
    }
}
