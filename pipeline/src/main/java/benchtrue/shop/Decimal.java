package benchtrue.shop;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Products of numbers held in ten-thousandths. */
final class Decimal {
    private Decimal() {}

    static long times(long left, long right) {
        long product = left * right;
        if (Math.multiplyHigh(left, right) == product >> 63) {
            long quotient = Math.floorDiv(product, Money.UNIT);
            long twice = 2 * Math.floorMod(product, Money.UNIT);
            return twice > Money.UNIT || (twice == Money.UNIT && (quotient & 1) == 1) ? quotient + 1 : quotient;
        }
        return BigDecimal.valueOf(left, 4)
                .multiply(BigDecimal.valueOf(right, 4))
                .setScale(4, RoundingMode.HALF_EVEN)
                .movePointRight(4)
                .longValueExact();
    }
}
