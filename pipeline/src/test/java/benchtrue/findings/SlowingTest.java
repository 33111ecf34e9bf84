package benchtrue.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopBuilder;
import benchtrue.findings.Slowing.Standing;
import benchtrue.findings.WatchSlowing.SelfStarting;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SlowingTest {
    private static final double SIGMAS = 3;

    @Test
    void theFirstJobsOnlySetTheLevelAndLaterOnesAreScoredAgainstThem() {
        double[] values = {2.1, 3.4, 2.8, 5.0, 4.2, 3.9, 2.6, 7.5, 3.1, 4.4};
        double[] scores = SelfStarting.scores(values);
        assertThat(Arrays.copyOf(scores, 8)).containsOnly(Double.NaN);
        // R 4.2.2: qnorm(pt((x[9] - mean(x[1:8])) / (sd(x[1:8]) * sqrt(9/8)), 7)), and likewise for the tenth.
        assertThat(scores[8]).isCloseTo(-0.4405127225, within(1e-9));
        assertThat(scores[9]).isCloseTo(0.3123612433, within(1e-9));
    }

    @Test
    void scoresOfJobsThatNeverChangeAreStandardNormalHoweverFewThereAre() {
        Random random = new Random(7);
        double sum = 0;
        double squares = 0;
        int count = 0;
        for (int series = 0; series < 2_000; series++) {
            for (double score : SelfStarting.scores(noise(random, 14))) {
                if (!Double.isNaN(score)) {
                    sum += score;
                    squares += score * score;
                    count++;
                }
            }
        }
        assertThat(sum / count).as("seed 7").isCloseTo(0, within(0.03));
        // Clipped at 3, which takes 0.005 off the variance.
        assertThat(squares / count).as("seed 7").isCloseTo(0.995, within(0.03));
    }

    @Test
    void falseAlarmsStayUnderTheRateThatIsStated() {
        Random random = new Random(11);
        int alarms = 0;
        int jobs = 0;
        for (int series = 0; series < 3_000; series++) {
            Optional<Slowing> found = watch(noise(random, 60)).newest();
            alarms += found.isPresent() ? 1 : 0;
            jobs += 60;
        }
        // At most P(Z > 3) a job; what later jobs refute is dropped again.
        assertThat(alarms / (double) jobs).as("seed 11").isLessThan(0.00135);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void workThatTakesAThirdLongerFromADayOnIsFound(int seed) {
        double[] values = noise(new Random(seed), 120);
        for (int i = 60; i < values.length; i++) {
            values[i] += StrictMath.log(1.3) / 0.25;
        }
        Slowing slowing = watch(scaled(values, 0.25)).newest().orElseThrow();
        assertThat(slowing.standing()).as("seed %d", seed).isEqualTo(Standing.CONFIRMED);
        assertThat(slowing.startDay()).as("seed %d", seed).isBetween(1_045, 1_075);
        assertThat(slowing.alarmDay()).as("seed %d", seed).isBetween(1_060, 1_090);
        assertThat(slowing.change()).as("seed %d", seed).isBetween(1.15, 1.5);
        assertThat(slowing.lower()).isLessThan(slowing.change());
        assertThat(slowing.upper()).isGreaterThan(slowing.change());
        assertThat(slowing.jobsBefore() + slowing.jobsSince()).isEqualTo(120);
    }

    @Test
    void aSignalOnTheLastJobsWaitsToBeBorneOut() {
        double[] values = noise(new Random(3), 60);
        for (int i = 57; i < values.length; i++) {
            values[i] = 4;
        }
        Slowing slowing = watch(values).newest().orElseThrow();
        assertThat(slowing.standing()).isEqualTo(Standing.SIGNALLED);
        assertThat(slowing.loadSince()).isNaN();
    }

    @Test
    void aBadWeekThatPassesIsForgotten() {
        double[] values = noise(new Random(4), 100);
        for (int i = 50; i < 54; i++) {
            values[i] = 3.5;
        }
        DriftChart chart = watch(values).chart();
        assertThat(chart.level(53)).isGreaterThan(chart.limit(53));
        assertThat(watch(values).newest()).isEmpty();
    }

    @Test
    void verdictAndMoneyOfASlowerRepairAreOfItsNewJobs() {
        Random random = new Random(5);
        ShopBuilder shop = new ShopBuilder().asOf("2026-10-31").type("nut", 1).type("setup", 1);
        for (int i = 0; i < 100; i++) {
            String opened = LocalDate.of(2024, 11, 1).plusDays(7L * i).toString();
            double load = i < 60 ? 0.95 : 1.4;
            shop.ticket(String.format("N%03d", i)).opened(opened).line("nut", 2);
            shop.logged("Ada", "1", hours(random, 2 * load));
            shop.ticket(String.format("S%03d", i)).opened(opened).line("setup", 2);
            shop.logged("Ada", "1", hours(random, 2));
        }
        Findings findings = JudgedShop.find(shop);
        RepairFinding nut = findings.repairs().get(0);
        assertThat(findings.drift().slowings()).hasSize(1);
        Slowing slowing = findings.drift().slowings().get(0);
        assertThat(slowing.loadSince()).isBetween(1.28, 1.48);
        assertThat(nut.loadFactor()).isBetween(1.05, 1.2);
        assertThat(nut.verdict()).isEqualTo(Verdict.UNDER_QUOTED);
        assertThat(nut.annualShortfall()).isBetween(nut.annualShortfallLower(), nut.annualShortfallUpper());
        assertThat(nut.why()).containsPattern("slower by \\d+\u00a0% since about (Oct|Nov|Dec)\u00a02025");
        ShortfallParts parts = findings.shortfalls().get(0);
        assertThat(parts.book() + parts.quotes() + parts.slower() + parts.rework())
                .isEqualTo(nut.annualShortfall());
        assertThat(parts.slower()).isGreaterThan(nut.annualShortfall() / 2);
    }

    private static double hours(Random random, double mean) {
        return StrictMath.rint(100 * mean * StrictMath.exp(0.2 * random.nextGaussian() - 0.02)) / 100;
    }

    private static double[] noise(Random random, int size) {
        double[] values = new double[size];
        Arrays.setAll(values, i -> random.nextGaussian());
        return values;
    }

    private static double[] scaled(double[] values, double spread) {
        return Arrays.stream(values).map(v -> spread * v).toArray();
    }

    private static WatchSlowing watch(double[] residuals) {
        int[] lines = IntStream.range(0, residuals.length).toArray();
        int[] days = IntStream.range(1_000, 1_000 + residuals.length).toArray();
        return new WatchSlowing(new DriftJobs(0, lines, days, residuals), SIGMAS);
    }
}
