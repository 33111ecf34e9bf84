package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class DistributionsTest {
    /** COMPUTED with R 4.2.2 {@code qnorm}, {@code qt}, {@code pt}. */
    @Test
    void smallSampleConstants() {
        assertThat(Normal.quantile(.975)).isCloseTo(1.95996398454, within(5e-12));
        assertThat(Normal.quantile(.95)).isCloseTo(1.64485362695, within(5e-12));
        assertThat(Normal.quantile(.75)).isCloseTo(0.674489750196, within(5e-13));
        assertThat(StudentT.quantile(.95, 9)).isCloseTo(1.83311293266, within(5e-11));
        assertThat(StudentT.quantile(.975, 9)).isCloseTo(2.2621571628, within(5e-11));
        assertThat(StudentT.lowerTail(-4.062127683, 9)).isCloseTo(0.0014164450995, within(5e-13));
    }

    /** Hollander and Wolfe 1973 p. 29f (inputs VERIFIED in R's wilcox.test.Rd), R 4.2.2 {@code t.test(log(x/y))}. */
    @Test
    void hollanderAndWolfePairsAgainstQuote() {
        double[] x = {1.83, 0.50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30};
        double[] y = {0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29};
        double[] logs = new double[9];
        Arrays.setAll(logs, i -> StrictMath.log(x[i] / y[i]));
        Moments moments = Moments.of(logs);
        double t = moments.mean() / error(moments);
        assertThat(moments.mean()).isCloseTo(0.318083391792, within(5e-13));
        assertThat(moments.standardDeviation()).isCloseTo(0.391106679476, within(5e-13));
        assertThat(t).isCloseTo(2.43987184431, within(5e-12));
        assertThat(StudentT.upperTail(t, 8)).isCloseTo(0.0202863086806, within(5e-14));
        double overTen = (moments.mean() - StrictMath.log(1.1)) / error(moments);
        assertThat(StudentT.upperTail(overTen, 8)).isCloseTo(0.0629330666103, within(5e-14));
        double reach = StudentT.quantile(.95, 8) * error(moments);
        assertThat(StrictMath.exp(moments.mean() - reach)).isCloseTo(1.07859166077, within(5e-11));
        assertThat(StrictMath.exp(moments.mean() + reach)).isCloseTo(1.75156664158, within(5e-11));
    }

    /** Constructed bench hours against a quote of 3.0 h: 22 % over on average and still not flagged at 5 %; COMPUTED. */
    @Test
    void benchHoursAgainstAThreeHourQuote() {
        Moments moments = Moments.of(
                Arrays.stream(BenchHours.JOBS).map(h -> StrictMath.log(h / 3)).toArray());
        double t = moments.mean() / error(moments);
        assertThat(t).isCloseTo(1.731002943, within(5e-10));
        assertThat(StudentT.upperTail(t, 9)).isCloseTo(0.0587499645, within(5e-11));
        assertThat(StrictMath.exp(moments.mean())).isCloseTo(1.221174306, within(5e-10));
    }

    /** Student 1908, sleep (R datasets::sleep); COMPUTED with {@code t.test(g2, g1, paired = TRUE)}. */
    @Test
    void sleepOfStudent1908() {
        Moments moments = Moments.of(new double[] {1.2, 2.4, 1.3, 1.3, 0.0, 1.0, 1.8, 0.8, 4.6, 1.4});
        double t = moments.mean() / error(moments);
        assertThat(t).isCloseTo(4.062127683, within(5e-10));
        assertThat(StudentT.upperTail(t, 9)).isCloseTo(0.0014164451, within(5e-11));
        double reach = StudentT.quantile(.975, 9) * error(moments);
        assertThat(moments.mean() - reach).isCloseTo(0.700114236723, within(1e-9));
        assertThat(moments.mean() + reach).isCloseTo(2.459885763277, within(1e-9));
    }

    /** COMPUTED with R 4.2.2 {@code dnorm(z) / pnorm(z, lower = FALSE)} and {@code pnorm(z, lower = FALSE, log = TRUE)}. */
    @Test
    void hazardAndLogTailFarOut() {
        assertThat(Normal.hazard(0)).isCloseTo(StrictMath.sqrt(2 / StrictMath.PI), withPercentage(1e-13));
        assertThat(Normal.hazard(-40)).isCloseTo(0, within(1e-300));
        assertThat(Normal.hazard(5)).isCloseTo(5.186503967125842, withPercentage(1e-11));
        assertThat(Normal.hazard(29.999999)).isCloseTo(Normal.hazard(30.000001), withPercentage(1e-5));
        assertThat(Normal.hazard(35)).isCloseTo(35.02852497059605, withPercentage(1e-11));
        assertThat(Normal.logUpperTail(-1)).isCloseTo(-0.1727537790234499, withPercentage(1e-11));
        assertThat(Normal.logUpperTail(35)).isCloseTo(-616.9751012619225, withPercentage(1e-11));
        assertThat(Normal.logUpperTail(60)).isCloseTo(-1805.013560680567, withPercentage(1e-11));
        assertThat(Normal.upperTail(1.96) + Normal.lowerTail(1.96)).isCloseTo(1, within(1e-15));
        assertThat(Normal.density(1)).isCloseTo(0.241970724519143, within(5e-16));
    }

    @Test
    void oneJobSaysNothingAboutScatter() {
        assertThat(StudentT.upperTail(2, 0)).isNaN();
        assertThat(StudentT.lowerTail(2, Double.NaN)).isNaN();
        assertThat(StudentT.quantile(.9, 0)).isNaN();
        assertThat(StudentT.quantile(Double.NaN, 4)).isNaN();
        assertThat(Normal.quantile(Double.NaN)).isNaN();
        assertThat(StudentT.quantile(.9, Double.POSITIVE_INFINITY)).isCloseTo(Normal.quantile(.9), within(1e-12));
        assertThatIllegalArgumentException().isThrownBy(() -> Normal.quantile(1.5));
        assertThatIllegalArgumentException().isThrownBy(() -> StudentT.quantile(-0.5, 4));
    }

    @Test
    void anIntervalsLevelLiesBetweenNoneAndAll() {
        assertThatIllegalArgumentException().isThrownBy(() -> Interval.lowerTail(0));
        assertThatIllegalArgumentException().isThrownBy(() -> Interval.lowerTail(1));
    }

    private static double error(Moments moments) {
        return moments.standardDeviation() / StrictMath.sqrt(moments.count());
    }
}
