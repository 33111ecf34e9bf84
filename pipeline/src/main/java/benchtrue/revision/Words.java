package benchtrue.revision;

import benchtrue.shop.Hours;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures as they stand in sentences. */
final class Words {
    private Words() {}

    static String ratio(double value) {
        return Double.isNaN(value)
                ? "unknown"
                : BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }

    static String percent(double share) {
        return BigDecimal.valueOf(share)
                        .movePointRight(2)
                        .setScale(0, RoundingMode.HALF_EVEN)
                        .toPlainString()
                + " %";
    }

    static String hours(double seconds) {
        return BigDecimal.valueOf(seconds / Hours.SECONDS)
                        .setScale(2, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros()
                        .toPlainString()
                + " h";
    }
}
