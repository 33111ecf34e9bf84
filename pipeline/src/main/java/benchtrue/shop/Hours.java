package benchtrue.shop;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Hours, kept as whole seconds so that sums are exact. */
public final class Hours {
    public static final long SECONDS = 3_600;

    private static final BigDecimal PER_HOUR = BigDecimal.valueOf(SECONDS);

    private Hours() {}

    /** Returns decimal hours as seconds, half-even where finer than a second. */
    public static long seconds(BigDecimal hours) {
        return hours.multiply(PER_HOUR).setScale(0, RoundingMode.HALF_EVEN).longValueExact();
    }

    /** Returns seconds as hours for ratios and drawing; not for sums that are published. */
    public static double of(long seconds) {
        return seconds / (double) SECONDS;
    }

    /** Returns seconds as decimal hours with four decimals and a point; empty where absent. */
    public static String text(long seconds) {
        return Absent.has(seconds)
                ? BigDecimal.valueOf(seconds)
                        .divide(PER_HOUR, 4, RoundingMode.HALF_EVEN)
                        .toPlainString()
                : "";
    }
}
