package benchtrue.costing;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/** Money an hour, and amounts scaled by a ratio; rounded once, half-even. */
final class Rate {
    private Rate() {}

    /** Returns an amount over some seconds as money an hour; absent without an amount or without hours. */
    static long hourly(long amount, long seconds) {
        return Absent.has(amount) && seconds > 0 ? scaled(amount, Hours.SECONDS, seconds) : Absent.AMOUNT;
    }

    /** Returns {@code amount * to / from}; {@code from} is not zero. */
    static long scaled(long amount, long to, long from) {
        long product = amount * to;
        if (Math.multiplyHigh(amount, to) == product >> 63 && from > 0) {
            return halfEven(product, from);
        }
        return new BigDecimal(BigInteger.valueOf(amount).multiply(BigInteger.valueOf(to)))
                .divide(BigDecimal.valueOf(from), 0, RoundingMode.HALF_EVEN)
                .longValueExact();
    }

    /** Returns a quotient rounded half-even; the denominator is positive. */
    static long halfEven(long numerator, long denominator) {
        long quotient = Math.floorDiv(numerator, denominator);
        long rest = Math.floorMod(numerator, denominator);
        long other = denominator - rest;
        return rest > other || (rest == other && (quotient & 1) == 1) ? quotient + 1 : quotient;
    }
}
