package benchtrue.costing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RateTest {
    @ParameterizedTest
    @CsvSource({"5, 2, 2", "7, 2, 4", "-5, 2, -2", "-7, 2, -4", "10, 4, 2", "14, 4, 4", "7, 3, 2", "-7, 3, -2"})
    void halvesGoToTheEvenNeighbour(long numerator, long denominator, long quotient) {
        assertThat(Rate.halfEven(numerator, denominator)).isEqualTo(quotient);
    }

    @Test
    void scalingIsThatOfDecimalArithmetic() {
        SplittableRandom random = new SplittableRandom(11);
        for (int round = 0; round < 5_000; round++) {
            long amount = random.nextLong(-(1L << 50), 1L << 50) >> random.nextInt(40);
            long to = random.nextLong(1L << 40) >> random.nextInt(38);
            long from = 1 + (random.nextLong(1L << 40) >> random.nextInt(38));
            BigDecimal exact = BigDecimal.valueOf(amount)
                    .multiply(BigDecimal.valueOf(to))
                    .divide(BigDecimal.valueOf(from), 0, RoundingMode.HALF_EVEN);
            if (exact.toBigInteger().bitLength() < 63) {
                assertThat(Rate.scaled(amount, to, from))
                        .as("%d * %d / %d", amount, to, from)
                        .isEqualTo(exact.longValueExact());
            }
        }
    }
}
