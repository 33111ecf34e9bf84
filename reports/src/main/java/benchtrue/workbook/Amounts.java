package benchtrue.workbook;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Hours, money and days as a spreadsheet's numbers; NaN where not recorded. */
final class Amounts {
    /** A spreadsheet counts days from 1899-12-30 (its 1900 date system, from March 1900 on). */
    private static final int SERIAL_OF_1970 = 25_569;

    private Amounts() {}

    static double hours(long seconds) {
        return Absent.has(seconds) ? Hours.of(seconds) : Double.NaN;
    }

    static double money(long tenThousandths) {
        return Absent.has(tenThousandths) ? Money.units(tenThousandths) : Double.NaN;
    }

    static double serial(int day) {
        return Absent.has(day) ? day + SERIAL_OF_1970 : Double.NaN;
    }

    /** Returns hours of a cell as whole seconds. */
    static long seconds(double hours) {
        return Hours.seconds(BigDecimal.valueOf(hours));
    }

    /** Returns an amount of a cell as ten-thousandths. */
    static long tenThousandths(double amount) {
        return Money.of(BigDecimal.valueOf(amount));
    }

    /** Returns a cell's date as a day. */
    static int day(double serial) {
        return (int) Math.floor(serial) - SERIAL_OF_1970;
    }

    /** Returns a number as it is typed. */
    static String plain(double value) {
        return BigDecimal.valueOf(value)
                .setScale(4, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
