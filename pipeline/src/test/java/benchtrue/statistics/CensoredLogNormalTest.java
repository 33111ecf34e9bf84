package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class CensoredLogNormalTest {
    private static final double[][] NONE = {};

    /** Miller 1997 (R survival::aml); COMPUTED with survival 3.5-3 {@code survreg(Surv(time, status) ~ x, dist = "lognormal")}. */
    @Test
    void amlOfMillerByGroup() {
        double[] nonmaintained = new double[23];
        Arrays.fill(nonmaintained, 11, 23, 1);
        CensoredLogNormal fit =
                CensoredLogNormal.fit(Aml.BOTH.times(), Aml.BOTH.observed(), new double[][] {nonmaintained});
        assertThat(fit.coefficient(0)).isCloseTo(3.57886202871, within(1e-8));
        assertThat(fit.coefficient(1)).isCloseTo(-0.724473085572, within(1e-8));
        assertThat(fit.scale()).isCloseTo(0.864701931916, within(1e-8));
        assertThat(fit.logLikelihood()).isCloseTo(-78.9276124503, within(1e-8));
        assertThat(fit.error(0)).isCloseTo(0.28468628087371, within(1e-7));
        assertThat(fit.error(1)).isCloseTo(0.38031671898883, within(1e-7));
        assertThat(fit.logScaleError()).isCloseTo(0.16950592613384, within(1e-7));
        assertThat(fit.fitted(0)).isCloseTo(fit.coefficient(0), within(1e-12));
        assertThat(fit.fitted(22)).isCloseTo(fit.coefficient(0) + fit.coefficient(1), within(1e-12));
    }

    @Test
    void amlOfMillerInterceptOnly() {
        CensoredLogNormal fit = CensoredLogNormal.fit(Aml.BOTH.times(), Aml.BOTH.observed(), NONE);
        assertThat(fit.coefficient(0)).isCloseTo(3.19445601363, within(1e-8));
        assertThat(fit.scale()).isCloseTo(0.929591982933, within(1e-8));
        assertThat(fit.logLikelihood()).isCloseTo(-80.6721547133, within(1e-8));
    }

    /** Without open jobs it is least squares on logs with the variance divided by n. */
    @Test
    void finishedJobsAloneGiveTheMeanOfTheLogs() {
        boolean[] finished = new boolean[10];
        Arrays.fill(finished, true);
        CensoredLogNormal fit = CensoredLogNormal.fit(BenchHours.JOBS, finished, NONE);
        Moments moments =
                Moments.of(Arrays.stream(BenchHours.JOBS).map(StrictMath::log).toArray());
        assertThat(fit.coefficient(0)).isCloseTo(moments.mean(), within(1e-14));
        assertThat(fit.scale()).isCloseTo(StrictMath.sqrt(moments.variance() * 0.9), within(1e-14));
    }

    @Test
    void anOpenJobIsWorthMoreThanItsHoursSoFar() {
        assertThat(CensoredLogNormal.expectedBeyond(1, 1, 0.5))
                .isCloseTo(1 + 0.5 * StrictMath.sqrt(2 / StrictMath.PI), within(1e-14));
        assertThat(CensoredLogNormal.expectedBeyond(-50, 1, 0.5)).isEqualTo(1);
    }

    @Test
    void tooFewFinishedJobsGiveNoFit() {
        CensoredLogNormal fit = CensoredLogNormal.fit(new double[] {2, 3, 4}, new boolean[] {true, false, false}, NONE);
        assertThat(fit.coefficient(0)).isNaN();
        assertThat(fit.scale()).isNaN();
        assertThat(fit.logLikelihood()).isNaN();
        assertThat(CensoredLogNormal.fit(new double[0], new boolean[0], NONE).scale())
                .isNaN();
    }

    /** Two finished jobs of the same length, and one open for less: nothing scatters, and the open job stays as it is. */
    @Test
    void jobsThatDoNotScatterHaveNoScale() {
        CensoredLogNormal fit = CensoredLogNormal.fit(new double[] {2, 2, 2}, new boolean[] {true, true, false}, NONE);
        assertThat(fit.coefficient(0)).isCloseTo(StrictMath.log(2), within(1e-15));
        assertThat(fit.scale()).isCloseTo(0, within(1e-14));
    }

    @Test
    void aTraitThatRepeatsAnotherGetsNoCoefficient() {
        double[] trait = {0, 1, 0, 1, 0, 1, 0, 1, 0, 1};
        boolean[] finished = {true, true, true, true, true, false, true, true, true, false};
        CensoredLogNormal alone = CensoredLogNormal.fit(BenchHours.JOBS, finished, new double[][] {trait});
        CensoredLogNormal doubled = CensoredLogNormal.fit(BenchHours.JOBS, finished, new double[][] {trait, trait});
        assertThat(doubled.coefficient(2)).isNaN();
        assertThat(doubled.error(2)).isNaN();
        assertThat(doubled.error(1)).isCloseTo(alone.error(1), within(1e-12));
        assertThat(doubled.coefficient(1)).isCloseTo(alone.coefficient(1), within(1e-12));
    }

    /** Two jobs done and three thousand open for far longer: the iteration creeps, and says so. */
    @Test
    void nearlyAllJobsOpenDoesNotComeToRest() {
        double[] hours = new double[3_002];
        Arrays.fill(hours, 400);
        hours[0] = 1;
        hours[1] = 2;
        boolean[] finished = new boolean[3_002];
        finished[0] = true;
        finished[1] = true;
        assertThat(CensoredLogNormal.fit(hours, finished, NONE).settled()).isFalse();
        Arrays.fill(finished, true);
        assertThat(CensoredLogNormal.fit(hours, finished, NONE).settled()).isTrue();
    }

    @Test
    void refusesJobsWithoutHours() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CensoredLogNormal.fit(new double[] {2, 0}, new boolean[2], NONE))
                .withMessageContaining("row 1");
    }
}
