package benchtrue.shop;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * One part, material or piece of outside work drawn.
 *
 * @param ticket index of the ticket, or {@link Absent#INDEX} for shop supplies
 * @param line index of the line, or {@link Absent#INDEX}
 * @param part code of the part
 * @param quantity in ten-thousandths
 * @param unitCharge charge for one, or {@link Absent#AMOUNT}
 * @param usedOn day drawn
 */
public record PartUse(
        int ticket, int line, int part, long quantity, long unitCost, long unitCharge, int usedOn, PartKind kind) {
    /** Returns quantity times unit cost, half-even to the ten-thousandth. */
    public long cost() {
        return Decimal.times(quantity, unitCost);
    }

    /** Returns quantity times unit charge, half-even to the ten-thousandth; absent where no charge is recorded. */
    public long charge() {
        return Absent.has(unitCharge) ? Decimal.times(quantity, unitCharge) : Absent.AMOUNT;
    }

    /** Products of numbers held in ten-thousandths. */
    static final class Decimal {
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
}
