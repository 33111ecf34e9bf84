package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.answers.Answers;
import benchtrue.calendar.PlanCalendar;
import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.findings.FindVerdicts;
import benchtrue.findings.Findings;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.ShopPace;
import benchtrue.findings.Verdict;
import benchtrue.hours.SplitHours;
import benchtrue.intake.ReadExports;
import benchtrue.reconcile.Reconcile;
import benchtrue.revision.AlreadyDecided;
import benchtrue.revision.ProposeRevision;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Tidiness;
import benchtrue.sample.Truth;
import benchtrue.sample.WriteSample;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When the whole shop gets slower or faster, every load is as of today, and the owner is told. */
class ShopPaceTest {
    private static final LocalDate AS_OF = LocalDate.of(2026, 10, 31);
    private static final int DAY = 5;
    private static final int HOURS = 6;

    @TempDir
    Path folder;

    /** What was found of one shop. */
    private record Found(Truth truth, CostedLines costs, Findings findings, Settings settings) {}

    private Found shop(long seed, int tickets, ToDoubleFunction<LocalDate> pace) throws IOException {
        Path shop = folder.resolve("shop-" + seed + "-" + pace.hashCode());
        Truth truth = WriteSample.write(
                SampleOptions.standard(shop).withSeed(seed).withTickets(tickets).with(Tidiness.TIDY));
        Path log = shop.resolve("exports/time-log.csv");
        List<String> rows = Files.readAllLines(log, StandardCharsets.UTF_8);
        Files.writeString(
                log,
                rows.get(0) + "\r\n"
                        + rows.stream().skip(1).map(row -> paced(row, pace)).collect(Collectors.joining("\r\n"))
                        + "\r\n");
        Settings settings = new ReadSettings().read(shop);
        CostedLines costs = new CostLines()
                .cost(
                        new SplitHours()
                                .split(
                                        new Reconcile()
                                                .reconcile(new ReadExports().read(shop, settings), settings, (int)
                                                        AS_OF.toEpochDay())
                                                .ledger(),
                                        settings),
                        settings);
        return new Found(truth, costs, new FindVerdicts().find(costs, settings), settings);
    }

    /** Hours at another pace than the generator's, which is today's. */
    private static String paced(String row, ToDoubleFunction<LocalDate> pace) {
        String[] cells = row.split(",", -1);
        if (!cells[HOURS].isEmpty()) {
            double hours = Double.parseDouble(cells[HOURS]) * pace.applyAsDouble(LocalDate.parse(cells[DAY]));
            cells[HOURS] = BigDecimal.valueOf(hours)
                    .setScale(3, RoundingMode.HALF_EVEN)
                    .toPlainString();
        }
        return String.join(",", cells);
    }

    private static ToDoubleFunction<LocalDate> aYear(double change) {
        return day -> Math.exp(-Math.log1p(change) * (AS_OF.toEpochDay() - day.toEpochDay()) / 365.25);
    }

    @Test
    void aShopThatGetsSlowerIsToldSoInOneSentence() throws IOException {
        Found found = shop(71, 1_000, aYear(0.10));
        ShopPace pace = found.findings.pace();
        assertThat(pace.sure()).isTrue();
        assertThat(pace.ratio(-2)).isLessThan(1.10).isGreaterThan(1);
        assertThat(pace.ratio(2)).isGreaterThan(1.10);
        Answers answers = Answers.of(
                found.findings,
                new ProposeRevision().propose(found.costs, found.findings, found.settings, AlreadyDecided.NOTHING),
                found.costs,
                new PlanCalendar().plan(found.costs, found.settings),
                found.settings);
        assertThat(answers.pace().orElseThrow())
                .matches(
                        "The whole shop takes \\d+.% longer than a year ago \\(\\d+.% to \\d+.%\\); every figure here is"
                                + " as of today\\.");
    }

    @Test
    void aShopThatGotFasterAtOnceIsToldSinceWhen() throws IOException {
        LocalDate tool = LocalDate.of(2025, 3, 1);
        Found found = shop(72, 1_000, day -> day.isBefore(tool) ? 1.25 : 1);
        ShopPace pace = found.findings.pace();
        assertThat(pace.step()).isTrue();
        assertThat(pace.ratio()).isBetween(0.74, 0.86);
        assertThat(Math.abs(pace.stepDay() - (int) tool.toEpochDay())).isLessThan(75);
    }

    @Test
    void aSteadyShopHasNoPace() throws IOException {
        assertThat(shop(73, 1_000, day -> 1).findings.pace().sure()).isFalse();
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

    /** The generator plants one repair that gets slower by itself. */
    private static boolean slow(Found found, RepairFinding finding) {
        return found.costs
                .jobs()
                .ledger()
                .repairTypes()
                .name(finding.repairType())
                .equals(found.truth.slowType());
    }

    private void hold(LongStream seeds, int tickets, double least) throws IOException {
        long[] all = seeds.toArray();
        StringBuilder table =
                new StringBuilder("a year: ranges that hold today's load, mean bias of ln load, false calls\n");
        double worst = 1;
        for (double change : new double[] {-0.09, -0.04, 0, 0.04, 0.10}) {
            int held = 0;
            int ranges = 0;
            double bias = 0;
            int wrong = 0;
            int sure = 0;
            for (long seed : all) {
                Found found = shop(seed, tickets, aYear(change));
                sure += found.findings.pace().sure() ? 1 : 0;
                for (RepairFinding finding : found.findings.repairs()) {
                    if (finding.lines() >= 20 && !Double.isNaN(finding.lower()) && !slow(found, finding)) {
                        String key = found.costs.jobs().ledger().repairTypes().name(finding.repairType());
                        double load = found.truth.type(key).trueLoad();
                        ranges++;
                        held += load >= finding.lower() && load <= finding.upper() ? 1 : 0;
                        bias += Math.log(Math.sqrt(finding.lower() * finding.upper()) / load);
                        wrong += finding.verdict() == Verdict.UNDER_QUOTED && load < 1
                                        || finding.verdict() == Verdict.OVER_QUOTED && load > 1
                                ? 1
                                : 0;
                    }
                }
            }
            table.append(String.format(
                    java.util.Locale.ROOT,
                    "%+.2f: %.3f of %d, %+.3f, %d; pace seen in %d of %d%n",
                    change,
                    held / (double) ranges,
                    ranges,
                    bias / ranges,
                    wrong,
                    sure,
                    all.length));
            worst = Math.min(worst, held / (double) ranges);
        }
        System.getLogger("benchtrue").log(System.Logger.Level.INFO, table.toString());
        assertThat(worst).as(table.toString()).isGreaterThan(least);
    }
}
