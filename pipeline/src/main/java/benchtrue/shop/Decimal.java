package benchtrue.shop;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Products of numbers held in ten-thousandths. */
final class Decimal {
    private Decimal() {}

    static long times(long left, long right) {
        return BigDecimal.valueOf(left, 4)
                .multiply(BigDecimal.valueOf(right, 4))
                .setScale(4, RoundingMode.HALF_EVEN)
                .movePointRight(4)
                .longValueExact();
    }
}
