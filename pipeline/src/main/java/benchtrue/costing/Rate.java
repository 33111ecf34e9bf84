package benchtrue.costing;

import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/** Money an hour. */
final class Rate {
    private Rate() {}

    /** Returns an amount over some seconds as money an hour, half-even; absent without an amount or without hours. */
    static long hourly(long amount, long seconds) {
        if (!Absent.has(amount) || seconds <= 0) {
            return Absent.AMOUNT;
        }
        return new BigDecimal(BigInteger.valueOf(amount).multiply(BigInteger.valueOf(Hours.SECONDS)))
                .divide(BigDecimal.valueOf(seconds), 0, RoundingMode.HALF_EVEN)
                .longValueExact();
    }
}
