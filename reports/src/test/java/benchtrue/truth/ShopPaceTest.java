package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.answers.Answers;
import benchtrue.calendar.PlanCalendar;
import benchtrue.findings.ShopPace;
import benchtrue.revision.AlreadyDecided;
import benchtrue.revision.ProposeRevision;
import benchtrue.sample.RewrittenLog;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Slowing;
import benchtrue.sample.Tidiness;
import benchtrue.sample.TrueRatios;
import benchtrue.truth.ScenarioTruth.Found;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When the whole shop gets slower or faster, every load is as of today, and the owner is told. */
class ShopPaceTest {
    private static final LocalDate AS_OF = LocalDate.of(2026, 10, 31);

    @TempDir
    Path folder;

    private Found shop(long seed, int tickets, ToDoubleFunction<LocalDate> pace) throws IOException {
        Path shop = folder.resolve("shop-" + seed + "-" + pace.hashCode());
        return ScenarioTruth.shop(
                shop, seed, tickets, RewrittenLog.times((day, hours) -> hours * pace.applyAsDouble(day)));
    }

    private static ToDoubleFunction<LocalDate> aYear(double change) {
        return day -> Math.exp(-Math.log1p(change) * (AS_OF.toEpochDay() - day.toEpochDay()) / 365.25);
    }

    @Test
    void aShopThatGetsSlowerIsToldSoInOneSentence() throws IOException {
        Found found = shop(71, 1_000, aYear(0.10));
        ShopPace pace = found.findings().pace();
        assertThat(pace.sure()).isTrue();
        assertThat(pace.ratio(-2)).isLessThan(1.10).isGreaterThan(1);
        assertThat(pace.ratio(2)).isGreaterThan(1.10);
        Answers answers = Answers.of(
                found.findings(),
                new ProposeRevision()
                        .propose(found.costs(), found.findings(), found.settings(), AlreadyDecided.NOTHING),
                found.costs(),
                new PlanCalendar().plan(found.costs(), found.settings()),
                found.settings());
        assertThat(answers.allowedFor().get(0))
                .matches(
                        "The whole shop takes \\d+.% longer than a year ago \\(\\d+.% to \\d+.%\\); every figure here is"
                                + " as of today\\.");
    }

    @Test
    void aShopThatGotFasterAtOnceIsToldSinceWhen() throws IOException {
        LocalDate tool = LocalDate.of(2025, 3, 1);
        Found found = shop(72, 1_000, day -> day.isBefore(tool) ? 1.25 : 1);
        ShopPace pace = found.findings().pace();
        assertThat(pace.step()).isTrue();
        assertThat(pace.ratio()).isBetween(0.74, 0.86);
        assertThat(Math.abs(pace.stepDay() - (int) tool.toEpochDay())).isLessThan(75);
    }

    @Test
    void aSteadyShopHasNoPace() throws IOException {
        assertThat(shop(73, 1_000, day -> 1).findings().pace().sure()).isFalse();
    }

    @Test
    void oneRepairThatGetsSlowerByItselfDoesNotMoveTheShopsClock() throws IOException {
        double ratio = 0;
        for (long seed = 74; seed < 77; seed++) {
            ratio += shop(seed, 2_000, aYear(-0.05)).findings().pace().ratio() / 3;
        }
        assertThat(ratio).isCloseTo(0.95, within(0.008));
    }

    @Test
    void rangesHoldTodaysLoadWhateverThePace() throws IOException {
        hold(LongStream.range(81, 83), 1_000, 0.75);
    }

    @Test
    @Tag("proof")
    void rangesHoldTodaysLoadWhateverThePaceInThirtyShops() throws IOException {
        hold(LongStream.range(201, 231), 1_200, 0.85);
    }

    @Test
    @Tag("proof")
    void theShareThatFitsIsTheShareAskedForWhateverThePace() throws IOException {
        for (double change : new double[] {-0.09, -0.04, 0, 0.04, 0.10}) {
            FitTruth truth = new FitTruth();
            for (long seed = 7_101; seed <= 7_112; seed++) {
                SampleOptions steady = SampleOptions.standard(folder.resolve("truth"))
                        .withSeed(seed)
                        .with(Tidiness.TIDY)
                        .with(Slowing.NONE);
                truth.add(shop(seed, 1_200, aYear(change)), TrueRatios.of(steady));
            }
            System.out.print(truth.row(String.format(Locale.ROOT, "%+.2f a year", change)));
            assertThat(truth.share()).isBetween(0.57, 0.63);
            assertThat(truth.beyondTheOracle()).isLessThan(0.02);
        }
    }

    private void hold(LongStream seeds, int tickets, double least) throws IOException {
        long[] all = seeds.toArray();
        StringBuilder table = new StringBuilder();
        double worst = 1;
        for (double change : new double[] {-0.09, -0.04, 0, 0.04, 0.10}) {
            ScenarioTruth truth = new ScenarioTruth();
            int sure = 0;
            for (long seed : all) {
                Found found = shop(seed, tickets, aYear(change));
                sure += found.findings().pace().sure() ? 1 : 0;
                truth.add(found);
            }
            table.append(truth.row(String.format(Locale.ROOT, "%+.2f a year, seen in %d", change, sure)));
            worst = Math.min(worst, truth.held());
        }
        System.out.print(table);
        assertThat(worst).as(table.toString()).isGreaterThan(least);
    }
}
