package benchtrue.workbook.sheet;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Hours, money and days as a spreadsheet's numbers; NaN where not recorded. */
public final class Amounts {
    /** A spreadsheet counts days from 1899-12-30 (its 1900 date system, from March 1900 on). */
    private static final int SERIAL_OF_1970 = 25_569;

    private Amounts() {}

    public static double hours(long seconds) {
        return Absent.has(seconds) ? Hours.of(seconds) : Double.NaN;
    }

    public static double money(long tenThousandths) {
        return Absent.has(tenThousandths) ? Money.units(tenThousandths) : Double.NaN;
    }

    /** Returns money to two digits, for a part of an estimate that has no range of its own. */
    public static double about(long tenThousandths) {
        double amount = money(tenThousandths);
        double step = step(Math.abs(amount));
        return Math.rint(amount / step) * step;
    }

    /** Returns an end of a range to two digits of the range's width. */
    public static double end(double amount, double width) {
        double step = step(width);
        return Math.copySign(Math.floor(Math.abs(amount) / step + 0.5) * step, amount) + 0.0;
    }

    private static double step(double width) {
        int places = Math.max(0, (int) Math.floor(StrictMath.log10(Math.max(1, width))) - 1);
        return StrictMath.pow(10, places);
    }

    public static double serial(int day) {
        return Absent.has(day) ? day + SERIAL_OF_1970 : Double.NaN;
    }

    /** Returns hours of a cell as whole seconds. */
    public static long seconds(double hours) {
        return Hours.seconds(BigDecimal.valueOf(hours));
    }

    /** Returns an amount of a cell as ten-thousandths. */
    public static long tenThousandths(double amount) {
        return Money.of(BigDecimal.valueOf(amount));
    }

    /** Returns a cell's date as a day. */
    public static int day(double serial) {
        return (int) Math.floor(serial) - SERIAL_OF_1970;
    }

    /** Returns a number as it is typed. */
    public static String plain(double value) {
        return BigDecimal.valueOf(value)
                .setScale(4, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
