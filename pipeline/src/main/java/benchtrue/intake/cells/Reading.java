package benchtrue.intake.cells;

import benchtrue.intake.columns.Problem;
import benchtrue.shop.Absent;
import java.math.BigDecimal;

/**
 * What one text says.
 *
 * @param value days, months, seconds, ten-thousandths, a count or the place of a word; absent where empty or unreadable
 * @param rounding what rounding to the unit added, in the unit
 * @param problem why it can't be used, or {@link Problem#NONE}
 */
public record Reading(long value, BigDecimal rounding, Problem problem) {
    public static final Reading NOTHING = new Reading(Absent.AMOUNT, BigDecimal.ZERO, Problem.NONE);

    static Reading of(long value) {
        return new Reading(value, BigDecimal.ZERO, Problem.NONE);
    }

    public static Reading bad(Problem problem) {
        return new Reading(Absent.AMOUNT, BigDecimal.ZERO, problem);
    }

    /** Returns the exact value rounded half-even to whole units. */
    static Reading rounded(BigDecimal exact, long largest) {
        BigDecimal whole = exact.setScale(0, java.math.RoundingMode.HALF_EVEN);
        if (whole.abs().compareTo(BigDecimal.valueOf(largest)) > 0) {
            return bad(Problem.TOO_LARGE);
        }
        return new Reading(whole.longValueExact(), whole.subtract(exact), Problem.NONE);
    }

    /** Returns this reading, its value kept, with a problem where the value is negative. */
    Reading notNegative() {
        return problem == Problem.NONE && value < 0 ? new Reading(value, rounding, Problem.NEGATIVE) : this;
    }
}
