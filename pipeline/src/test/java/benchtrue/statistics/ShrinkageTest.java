package benchtrue.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * COMPUTED with metafor 3.8-1 on R 4.2.2 unless marked otherwise; Paule and Mandel's equation solved with {@code uniroot} to the last digit,
 * since metafor stops at 1e-5.
 */
class ShrinkageTest {
    private static final double NA = Double.NaN;

    /** Three repair types by hand (constructed; by hand and {@code rma(y, v, method = "DL")}). */
    @Test
    void threeRepairTypesByHand() {
        double[] y = {0.10, 0.25, 0.55};
        double[] v = {0.01, 0.02, 0.04};
        Shrinkage fit = Shrinkage.derSimonianLaird(y, v);
        assertThat(fit.count()).isEqualTo(3);
        assertThat(fit.heterogeneity()).isCloseTo(4.17857142857, within(5e-12));
        assertThat(fit.between()).isCloseTo(0.0217857142857, within(5e-14));
        assertThat(fit.mean()).isCloseTo(0.25190549608, within(5e-12));
        assertThat(fit.meanError()).isCloseTo(0.118198628528, within(5e-13));
        double[] lean = {0.314606742, 0.478632479, 0.647398844};
        double[] shrunk = {0.147790493, 0.250912032, 0.357013963};
        for (int i = 0; i < 3; i++) {
            assertThat(fit.lean(i)).isCloseTo(lean[i], within(5e-10));
            assertThat(fit.shrunk(i)).isCloseTo(shrunk[i], within(5e-10));
        }
        Shrinkage exact = Shrinkage.pauleMandel(y, v);
        assertThat(exact.between()).isCloseTo(0.025650788109506, within(1e-13));
        assertThat(exact.mean()).isCloseTo(0.255555555555556, within(1e-13));
    }

    /** Colditz et al. 1994, 13 trials. */
    @Test
    void bcgVaccineOfColditz1994() {
        ReferenceData trials = ReferenceData.read("bcg.csv");
        double[] y = trials.numbers("yi");
        double[] v = trials.numbers("vi");
        Shrinkage moments = Shrinkage.derSimonianLaird(y, v);
        assertThat(moments.heterogeneity()).isCloseTo(152.233008082, within(2e-6));
        assertThat(moments.between()).isCloseTo(0.308760262862, within(1e-8));
        assertThat(moments.mean()).isCloseTo(-0.714117222073, within(1e-8));
        assertThat(moments.meanError()).isCloseTo(0.178742089535, within(1e-8));
        double[] shrunk = trials.numbers("blup");
        for (int i = 0; i < 13; i++) {
            assertThat(moments.shrunk(i)).as("trial %d", i).isCloseTo(shrunk[i], within(2e-8));
        }
        Shrinkage exact = Shrinkage.pauleMandel(y, v);
        assertThat(exact.between()).isCloseTo(0.31806845220502, within(1e-8));
        assertThat(exact.mean()).isCloseTo(-0.71496815349344, within(1e-8));
    }

    /** Raudenbush 1984, 19 studies (inputs VERIFIED: metafor 71ae8f5). */
    @Test
    void teacherExpectancyOfRaudenbush1984() {
        double[] y = ReferenceData.numbersIn(
                ".03 .12 -.14 1.18 .26 -.06 -.02 -.32 .27 .80 .54 .18 -.02 .23 -.18 -.06 .30 .07 -.07");
        double[] v =
                ReferenceData.numbersIn(".0156 .0216 .0279 .1391 .1362 .0106 .0106 .0484 .0269 .0630 .0912 .0497 .0835"
                        + " .0841 .0253 .0279 .0193 .0088 .0303");
        assertThat(Shrinkage.derSimonianLaird(y, v).heterogeneity()).isCloseTo(35.8295363, within(5e-7));
        assertThat(Shrinkage.derSimonianLaird(y, v).between()).isCloseTo(0.0259036723, within(5e-10));
        assertThat(Shrinkage.derSimonianLaird(y, v).mean()).isCloseTo(0.0893220844, within(5e-10));
        assertThat(Shrinkage.pauleMandel(y, v).between()).isCloseTo(0.051773310103022, within(1e-13));
        assertThat(Shrinkage.pauleMandel(y, v).mean()).isCloseTo(0.103956970240951, within(1e-13));
    }

    /** DerSimonian and Kacker 2007, Tables 3 and 4, log odds ratios (VERIFIED: metafor 71ae8f5). */
    @Test
    void claspOfDerSimonianAndKacker2007() {
        int[] n1 = {156, 303, 565, 1570, 103, 4659};
        int[] n2 = {74, 303, 477, 1565, 105, 4650};
        int[] x1 = {5, 5, 12, 69, 9, 313};
        int[] x2 = {8, 17, 9, 94, 11, 352};
        double[] y = new double[6];
        double[] v = new double[6];
        for (int i = 0; i < 6; i++) {
            double[] cells = {x1[i], n1[i] - x1[i], x2[i], n2[i] - x2[i]};
            y[i] = StrictMath.log(cells[0] / cells[1] / (cells[2] / cells[3]));
            v[i] = Arrays.stream(cells).map(c -> 1 / c).sum();
        }
        Shrinkage exact = Shrinkage.pauleMandel(y, v);
        assertThat(StrictMath.sqrt(exact.between())).isCloseTo(0.3681, within(5e-5));
        assertThat(exact.mean()).isCloseTo(-0.3811, within(5e-5));
        assertThat(exact.meanError()).isCloseTo(0.2060, within(5e-5));
        Shrinkage moments = Shrinkage.derSimonianLaird(y, v);
        assertThat(moments.between()).isCloseTo(0.05396629942, within(5e-11));
        assertThat(moments.mean()).isCloseTo(-0.3240, within(5e-5));
        assertThat(moments.meanError()).isCloseTo(0.1540, within(5e-5));
    }

    /** Rubin 1981: no spread beyond chance, so everything leans wholly and nothing goes negative. */
    @Test
    void eightSchoolsOfRubin1981() {
        double[] y = {28, 8, -3, 7, -1, 1, 18, 12};
        double[] v = Arrays.stream(new double[] {15, 10, 16, 11, 9, 11, 10, 18})
                .map(se -> se * se)
                .toArray();
        for (Shrinkage fit : new Shrinkage[] {Shrinkage.derSimonianLaird(y, v), Shrinkage.pauleMandel(y, v)}) {
            assertThat(fit.heterogeneity()).isCloseTo(4.70707886, within(5e-9));
            assertThat(fit.between()).isZero();
            assertThat(fit.mean()).isCloseTo(7.68561672496, within(5e-12));
            assertThat(fit.meanError()).isCloseTo(4.0719191584, within(5e-11));
            assertThat(fit.shrunk(0)).isEqualTo(fit.mean());
            assertThat(fit.error(0)).isCloseTo(fit.meanError(), within(1e-12));
        }
    }

    /** A shrunk estimate's error by hand: &tau;&sup2;v/(&tau;&sup2;+v) + lean&sup2; se&sup2; at &tau;&sup2; = 2, v = 2, with two types of 0 and 4. */
    @Test
    void theErrorOfAShrunkEstimateByHand() {
        Shrinkage fit = Shrinkage.derSimonianLaird(new double[] {0, 4}, new double[] {2, 2});
        assertThat(fit.between()).isCloseTo(6, within(1e-12));
        assertThat(fit.lean(0)).isCloseTo(0.25, within(1e-12));
        assertThat(fit.shrunk(0)).isCloseTo(0.5, within(1e-12));
        assertThat(fit.error(0)).isCloseTo(StrictMath.sqrt(1.5 + 0.0625 * 4), within(1e-12));
    }

    @Test
    void aTypeThatKnowsNothingLeansWholly() {
        double[] y = {0.10, NA, 0.25, 0.3, 0.55};
        double[] v = {0.01, 0.01, 0.02, Double.POSITIVE_INFINITY, 0.04};
        Shrinkage fit = Shrinkage.derSimonianLaird(y, v);
        assertThat(fit.count()).isEqualTo(3);
        assertThat(fit.mean()).isCloseTo(0.25190549608, within(5e-12));
        assertThat(fit.shrunk(1)).isEqualTo(fit.mean());
        assertThat(fit.shrunk(3)).isEqualTo(fit.mean());
        assertThat(fit.lean(1)).isEqualTo(1);
        assertThat(fit.error(3))
                .isCloseTo(StrictMath.sqrt(fit.between() + fit.meanError() * fit.meanError()), within(1e-15));
    }

    @Test
    void oneTypeHasNoSpreadAndNoneHasNoMean() {
        Shrinkage one = Shrinkage.derSimonianLaird(new double[] {0.2}, new double[] {0.04});
        assertThat(one.mean()).isEqualTo(0.2);
        assertThat(one.between()).isZero();
        assertThat(one.meanError()).isCloseTo(0.2, within(1e-15));
        assertThat(Shrinkage.pauleMandel(new double[] {0.2}, new double[] {0.04})
                        .between())
                .isZero();
        assertThat(Shrinkage.derSimonianLaird(new double[0], new double[0]).mean())
                .isNaN();
        assertThat(Shrinkage.pauleMandel(new double[] {NA}, new double[] {1}).mean())
                .isNaN();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Shrinkage.derSimonianLaird(new double[] {1}, new double[] {0}))
                .withMessageContaining("variance 0");
    }
}
