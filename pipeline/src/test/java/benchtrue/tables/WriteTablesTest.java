package benchtrue.tables;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.ShopSettings;
import benchtrue.calendar.PlanCalendar;
import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.findings.Findings;
import benchtrue.findings.FoundRepairs;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Verdict;
import benchtrue.hours.SplitHours;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.DraftOf;
import benchtrue.revision.FitCurve;
import benchtrue.revision.ProposalInputs;
import benchtrue.revision.ProposedChange;
import benchtrue.revision.Revision;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.CostBehaviour;
import benchtrue.shop.WaitReason;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WriteTablesTest {
    @TempDir
    Path folder;

    private static Ledger shop() {
        ShopBuilder shop = new ShopBuilder()
                .type("refret", 8)
                .type("=setup", 1.5, "setup")
                .wage("ann", 25, "2025-01-01")
                .wage("ben", 20, "2025-01-01")
                .overhead("2026-01", "rent", 870, CostBehaviour.FIXED);
        shop.ticket("T1").of("acoustic-guitar", "front, desk").line("refret", 8).logged("ann", "1", 10.25);
        shop.ticket("U1").line("refret", 8).whole("ben", 11);
        shop.ticket("V1").line("=setup", 1.5).stillOpen().logged("ben", "1", 0.5);
        shop.ticket("W1").line("=setup", 1.5).declined();
        return shop.build();
    }

    /** Codes follow the keys' order: 0 is the set-up, 1 the refret. */
    private static final Findings FINDINGS = FoundRepairs.of(List.of(
            new RepairFinding(
                    0,
                    1,
                    1.5,
                    5_761,
                    0,
                    1.0669,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Double.NaN,
                    Absent.AMOUNT,
                    Absent.AMOUNT,
                    Absent.AMOUNT,
                    Verdict.TOO_FEW_JOBS,
                    "1 job: too few to judge."),
            new RepairFinding(
                    1,
                    2,
                    16,
                    76_500,
                    1_800,
                    1.359375,
                    1.31,
                    1.27,
                    1.38,
                    0.999997,
                    0.0000223,
                    25_636_560,
                    21_000_000,
                    30_000_000,
                    Verdict.UNDER_QUOTED,
                    "2 jobs took 1.36 hours per quoted hour, more than chance explains.")));

    private static final ProposalInputs GROUNDS = new ProposalInputs(
            1,
            Double.NaN,
            1,
            new FitCurve(Collections.nCopies(FitCurve.SHARES, 1.0)),
            1,
            1,
            1,
            10,
            4_050,
            36_000,
            ProposalInputs.Shortening.MAY);

    private static final Revision REVISION = DraftOf.changes(List.of(
            new ProposedChange(
                    0,
                    5_400,
                    5_400,
                    1_500_000,
                    1_500_000,
                    Double.NaN,
                    Double.NaN,
                    0,
                    "",
                    "too few jobs",
                    GROUNDS,
                    Verdict.TOO_FEW_JOBS),
            new ProposedChange(
                    1,
                    28_800,
                    36_000,
                    8_000_000,
                    10_000_000,
                    0,
                    0.25,
                    16_000_000,
                    "60 % of jobs fit",
                    "at most 25 %; the rest, to 10.8 h, is carried forward",
                    GROUNDS,
                    Verdict.UNDER_QUOTED)));

    private void write(Ledger ledger) throws IOException {
        write(ledger, Settings.DEFAULTS);
    }

    private void write(Ledger ledger, Settings settings) throws IOException {
        CostedLines costs = new CostLines().cost(new SplitHours().split(ledger, settings), settings);
        WriteTables tables = new WriteTables(costs, new PlanCalendar().plan(costs, settings), FINDINGS, settings);
        tables.small(REVISION, folder);
        tables.lines(folder);
    }

    @ParameterizedTest
    @ValueSource(strings = {"lines.csv", "findings.csv", "revision.csv"})
    void aSmallShopsTablesAreAsTheyWereApproved(String table) throws IOException {
        write(shop());
        try (InputStream approved = getClass().getResourceAsStream(table)) {
            assertThat(Files.readString(folder.resolve(table)))
                    .isEqualTo(new String(approved.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void earlierFindingsAreReadBackAsTheyWereWritten() throws IOException {
        write(shop());
        assertThat(new EarlierResult(folder).findings())
                .containsExactly(
                        new EarlierResult.EarlierFinding("=setup", 1, 1.0669, "too few jobs"),
                        new EarlierResult.EarlierFinding("refret", 2, 1.359375, "under-quoted"));
    }

    @Test
    void withoutWagesAndOverheadsTheCostsAreEmptyNotZero() throws IOException {
        write(new ShopBuilder()
                .without("technicians")
                .without("overheads")
                .without("parts-usage")
                .type("=setup", 1.5)
                .type("refret", 8)
                .ticket("T1")
                .line("refret", 8)
                .logged("ann", "1", 10)
                .build());
        assertThat(Files.readAllLines(folder.resolve("lines.csv")).get(1)).contains(",,800.0000,,,,,,80.0000,refret,");
    }

    @Test
    void whoQuotedAndWhoWorkedStandsInTheLinesOnlyWhereTheShopShowsPeople() throws IOException {
        write(shop());
        assertThat(Files.readString(folder.resolve("lines.csv"))).doesNotContain("front, desk", ",ann,", ",ben,");
        write(shop(), new ShopSettings().people(Disclosure.SHOWN).build());
        assertThat(Files.readString(folder.resolve("lines.csv"))).contains("\"front, desk\"", ",ann,", ",ben,");
    }

    @Test
    void aDayOnWhichAnInstrumentWaitsForTwoReasonsCountsOnceInTheWhole() {
        ShopBuilder shop = new ShopBuilder().type("refret", 8);
        shop.ticket("T1")
                .line("refret", 8)
                .waited("2026-01-08", "2026-01-12", WaitReason.PARTS)
                .waited("2026-01-12", "2026-01-13", WaitReason.GLUE_CURING)
                .waited("2026-01-20", "2026-03-01", WaitReason.PICK_UP);
        DaysWaited days = new DaysWaited(shop.build());
        assertThat(days.inShop(0)).as("from 10 to 24 January").isEqualTo(15);
        assertThat(days.waited(0, WaitReason.PARTS))
                .as("from the day it came in")
                .isEqualTo(3);
        assertThat(days.waited(0, WaitReason.GLUE_CURING)).isEqualTo(2);
        assertThat(days.waited(0, WaitReason.PICK_UP)).as("to the day it left").isEqualTo(5);
        assertThat(days.waited(0)).isEqualTo(9);
    }

    @Test
    void withoutTheTableOfWaitsNobodyKnowsWhatWasWaitedFor() {
        ShopBuilder shop = new ShopBuilder().without("waits").type("refret", 8);
        shop.ticket("T1").line("refret", 8);
        assertThat(new DaysWaited(shop.build()).waited(0)).isEqualTo(Absent.AMOUNT);
    }
}
