package benchtrue.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopBuilder;
import benchtrue.ShopSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import benchtrue.shop.ReturnReason;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;

class FindVerdictsTest {
    /** Positive pairs of Hollander and Wolfe 1973, p. 29f: hours worked, hours quoted. */
    private static final double[] WORKED = {1.83, 0.50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30};

    private static final double[] QUOTED = {0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29};
    private static final double[] EVEN = {0.9, 1.05, 1.0, 0.95, 1.1};

    @Test
    void rangeAndChancesOfOneRepairAgreeWithAJackknifeInR() {
        ShopBuilder shop = new ShopBuilder().type("refret", 2);
        for (int i = 0; i < WORKED.length; i++) {
            shop.ticket("T" + i).line("refret", QUOTED[i]).logged("Ada", "1", WORKED[i]);
        }
        RepairFinding refret = JudgedShop.find(shop).repairs().get(0);
        // R 4.2.2: l = log(leave-one-out ratios); se = sqrt(8/9 sum((l - mean(l))^2)); qt, pt with 8 df.
        assertThat(refret.lines()).isEqualTo(9);
        assertThat(refret.loadFactor()).isCloseTo(1.3235600157236, within(1e-9));
        assertThat(refret.lower()).isCloseTo(1.0636330351363, within(1e-9));
        assertThat(refret.upper()).isCloseTo(1.6470070572769, within(1e-9));
        assertThat(refret.chanceOver()).isCloseTo(0.9778741471002, within(1e-9));
        // Two p-values are corrected together: 0.0422195716941 x 2 / 1.
        assertThat(refret.adjustedP()).isCloseTo(0.0844391433882, within(1e-9));
        assertThat(refret.verdict()).isEqualTo(Verdict.UNDER_QUOTED);
    }

    @Test
    void eachVerdictHasItsOwnWords() {
        Findings findings = JudgedShop.find(fiveRepairs());
        assertThat(findings.repairs())
                .extracting(repair -> repair.verdict() + ": " + repair.why().replace('\u00a0', ' '))
                .containsExactly(
                        "UNDER_QUOTED: 10 jobs took 1.50 hours per quoted hour (90 % range 1.44 to 1.57), more than chance"
                                + " explains: it loses 540 to 700 a year at 100 an hour.",
                        "OVER_QUOTED: 10 jobs took 0.50 hours per quoted hour (90 % range 0.48 to 0.52), too few for chance"
                                + " to explain: its quotes run over by 593 to 647 a year at 100 an hour.",
                        "TOO_FEW_JOBS: No finished job yet.",
                        "LEANING_UNDER: 10 jobs took 1.15 hours per quoted hour (90 % range 0.95 to 1.39), above the"
                                + " quote, but chance alone could do that.",
                        "TOO_FEW_JOBS: 4 jobs took 2.00 hours per quoted hour: too few to judge, at least 5 tickets with"
                                + " logged hours are needed.",
                        "ON_THE_MARK: 10 jobs took 1.00 hours per quoted hour (90 % range 0.96 to 1.04), within 5 % of"
                                + " the quote.");
    }

    @Test
    void theSentenceIsWrittenInTheShopsOwnFigures() {
        Settings german = new ShopSettings().currency("EUR").locale("de").build();
        RepairFinding under = JudgedShop.find(fiveRepairs(), german).repairs().get(0);
        assertThat(under.why())
                .contains(
                        "took 1,50 hours",
                        german.figures().moneyRange(under.annualShortfallLower(), under.annualShortfallUpper()))
                .endsWith("a year at 100\u00a0\u20ac an hour.");
    }

    @Test
    void hoursOfAReturnCountForTheRepairThatFailed() {
        ShopBuilder shop = new ShopBuilder().type("nut", 1);
        for (int i = 0; i < 6; i++) {
            shop.ticket("T" + i).line("nut", 1).logged("Ada", "1", 1);
        }
        shop.ticket("T9")
                .line("nut", 1)
                .putsRight("T0", "1", ReturnReason.OUR_FAULT)
                .logged("Ada", "1", 3);
        RepairFinding nut = JudgedShop.find(shop).repairs().get(0);
        assertThat(nut.lines()).isEqualTo(6);
        assertThat(nut.actualSeconds()).isEqualTo(6 * 3_600);
        assertThat(nut.reworkSeconds()).isEqualTo(3 * 3_600);
        assertThat(nut.loadFactor()).isEqualTo(1.5);
        assertThat(nut.why()).contains("of which 0.50 hours went into putting earlier work right");
    }

    @Test
    void aSureButSmallLossIsNotCalledUnderQuoted() {
        Settings settings = materiality(1_000_000 * Money.UNIT);
        RepairFinding binding =
                JudgedShop.find(fiveRepairs(), settings).repairs().get(0);
        assertThat(binding.adjustedP()).isLessThan(0.10);
        assertThat(binding.verdict()).isEqualTo(Verdict.LEANING_UNDER);
        assertThat(binding.why()).contains("too little to matter");
    }

    @Test
    void moneyAYearCountsTheLastYearsJobsAlone() {
        ShopBuilder shop = new ShopBuilder().type("nut", 1).asOf("2026-10-31");
        for (int i = 0; i < 10; i++) {
            String opened = i < 5 ? "2023-01-10" : "2026-01-10";
            shop.ticket("T" + i).opened(opened).line("nut", 1).logged("Ada", "1", 1.2 + i % 5 * 0.1);
        }
        RepairFinding nut = JudgedShop.find(shop).repairs().get(0);
        // Five quoted hours in the last year, 0.4 hours too few for each, at 100 an hour.
        assertThat(nut.annualShortfall()).isEqualTo(200 * Money.UNIT);
        assertThat(nut.annualShortfallLower()).isBetween(0L, 200 * Money.UNIT);
        assertThat(nut.annualShortfallUpper()).isGreaterThan(200 * Money.UNIT);
    }

    @Test
    void aRepairWithFourJobsGetsNoRangeAndNoVerdict() {
        RepairFinding few = JudgedShop.find(fiveRepairs()).repairs().get(4);
        assertThat(few.lines()).isEqualTo(4);
        assertThat(few.lower()).isNaN();
        assertThat(few.adjustedP()).isNaN();
        assertThat(few.annualShortfallUpper()).isEqualTo(Absent.AMOUNT);
        assertThat(few.verdict()).isEqualTo(Verdict.TOO_FEW_JOBS);
    }

    @Test
    void theUsualJobLeansOnItsFamilyWhereItsOwnJobsAreFew() {
        ShopBuilder shop = new ShopBuilder()
                .type("bridge", 1)
                .type("nut", 1)
                .type("peg", 1)
                .type("saddle", 1);
        for (int i = 0; i < 30; i++) {
            double scatter = EVEN[i % 5];
            shop.ticket("B" + i).line("bridge", 1).logged("Ada", "1", 1.8 * scatter);
            shop.ticket("N" + i).line("nut", 1).logged("Ada", "1", 2 * scatter);
            shop.ticket("P" + i).line("peg", 1).logged("Ada", "1", 2.2 * scatter);
        }
        shop.ticket("S").line("saddle", 1).logged("Ada", "1", 1.7);
        List<RepairFinding> repairs = JudgedShop.find(shop).repairs();
        assertThat(repairs.get(3).typicalFactor())
                .as("one job at 1, the family at 2")
                .isBetween(1.05, 1.9);
        assertThat(repairs.get(1).typicalFactor()).as("thirty jobs of its own").isBetween(1.95, 2.05);
    }

    @Test
    void figuresAreTheSameOnAnyNumberOfThreads() throws Exception {
        Findings one = onThreads(1, () -> JudgedShop.find(fiveRepairs()));
        Findings four = onThreads(4, () -> JudgedShop.find(fiveRepairs()));
        assertThat(one.repairs()).isEqualTo(four.repairs());
        assertThat(one.usualJobs()).isEqualTo(four.usualJobs());
        assertThat(one.copiedQuotes()).isEqualTo(four.copiedQuotes());
    }

    private static <T> T onThreads(int threads, Callable<T> work) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(work).get();
        } finally {
            pool.shutdown();
        }
    }

    /** Binding 1.5, buff 0.5, crown never done, fret level 1.5 or 0.8 by turns, nut four times, setup even. */
    private static ShopBuilder fiveRepairs() {
        ShopBuilder shop = new ShopBuilder()
                .type("binding", 1)
                .type("buff", 1)
                .type("crown", 1)
                .type("level", 1)
                .type("nut", 1)
                .type("setup", 1);
        for (int i = 0; i < 10; i++) {
            double scatter = EVEN[i % 5];
            shop.ticket("A" + i).line("binding", 1).logged("Ada", "1", 1.5 * scatter);
            shop.ticket("B" + i).line("buff", 1).logged("Ada", "1", 0.5 * scatter);
            shop.ticket("D" + i).line("level", 1).logged("Ada", "1", i % 2 == 0 ? 1.5 : 0.8);
            shop.ticket("F" + i).line("setup", 1).logged("Ada", "1", scatter);
        }
        for (int i = 0; i < 4; i++) {
            shop.ticket("E" + i).line("nut", 1).logged("Ada", "1", 2);
        }
        return shop;
    }

    @Test
    void jobsThatAllTookTheSameAreAsSureAsCanBe() {
        ShopBuilder shop = new ShopBuilder().type("jack", 2).type("fret dress", 2);
        for (int i = 0; i < 30; i++) {
            shop.ticket("J" + i).line("jack", 2).logged("Ada", "1", 2.5);
            shop.ticket("F" + i).line("fret dress", 2).logged("Ada", "1", 1.5);
        }
        assertThat(JudgedShop.find(shop).repairs())
                .extracting(RepairFinding::verdict)
                .containsExactly(Verdict.OVER_QUOTED, Verdict.UNDER_QUOTED);
    }

    @Test
    void withoutASettingWhatTwoBenchHoursCostIsBigEnoughToMatter() {
        assertThat(Settings.DEFAULTS.materiality(90 * Money.UNIT)).isEqualTo(180 * Money.UNIT);
        assertThat(materiality(0).materiality(90 * Money.UNIT)).isZero();
    }

    private static Settings materiality(long amount) {
        return new ShopSettings().materiality(amount).build();
    }
}
