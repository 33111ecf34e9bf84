package benchtrue.shop;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/** Money in the shop's currency, kept as ten-thousandths so that sums are exact. */
public final class Money {
    /** Ten-thousandths in one currency unit. */
    public static final long UNIT = 10_000;

    private static final BigInteger SECONDS_PER_HOUR = BigInteger.valueOf(Hours.SECONDS);

    private Money() {}

    /** Returns an amount as ten-thousandths, half-even where finer. */
    public static long of(BigDecimal amount) {
        return amount.movePointRight(4).setScale(0, RoundingMode.HALF_EVEN).longValueExact();
    }

    /** Returns ten-thousandths as currency units for ratios and drawing; not for sums that are published. */
    public static double units(long tenThousandths) {
        return tenThousandths / (double) UNIT;
    }

    /** Returns the price of some seconds at an hourly rate in ten-thousandths, half-even. */
    public static long perHour(long hourlyRate, long seconds) {
        long product = Math.multiplyHigh(hourlyRate, seconds);
        long low = hourlyRate * seconds;
        if ((product == 0 && low >= 0) || (product == -1 && low < 0)) {
            return halfEven(low, Hours.SECONDS);
        }
        return new BigDecimal(BigInteger.valueOf(hourlyRate).multiply(BigInteger.valueOf(seconds)))
                .divide(new BigDecimal(SECONDS_PER_HOUR), 0, RoundingMode.HALF_EVEN)
                .longValueExact();
    }

    private static long halfEven(long numerator, long denominator) {
        long quotient = Math.floorDiv(numerator, denominator);
        long twice = 2 * Math.floorMod(numerator, denominator);
        boolean up = twice > denominator || (twice == denominator && (quotient & 1) == 1);
        return up ? quotient + 1 : quotient;
    }

    /** Returns ten-thousandths as currency units with four decimals and a point; empty where absent. */
    public static String text(long tenThousandths) {
        return Absent.has(tenThousandths)
                ? BigDecimal.valueOf(tenThousandths, 4).toPlainString()
                : "";
    }
}
