package benchtrue.revision;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Slowing;
import benchtrue.findings.Verdict;
import benchtrue.settings.Settings;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JobTotalsTest {
    private static final RepairFinding FINDING =
            new RepairFinding(0, 60, 600, 0, 0, 1.1, 1.1, 1, 1.2, 0.9, 0.01, 0, 0, 0, Verdict.UNDER_QUOTED, "");

    private static Slowing slowing(double loadSince) {
        int start = ShopBuilder.day("2026-03-02");
        return new Slowing(0, Slowing.Standing.CONFIRMED, start, start + 60, 45, 15, 1.3, 1.1, 1.5, loadSince);
    }

    @Test
    void aRepairThatSurelyGotSlowerIsProposedFromItsJobsSince() {
        JobTotals taken = JobTotals.of(FINDING, Optional.of(slowing(1.35)), 1.1);
        assertThat(taken.loadFactor()).isEqualTo(1.35);
        assertThat(taken.words(Settings.DEFAULTS.figures())).isEqualTo("15 jobs since it got slower on 2 Mar 2026");
    }

    @Test
    void aSignalThatNothingBearsOutYetLeavesAllJobs() {
        JobTotals taken = JobTotals.of(FINDING, Optional.of(slowing(Double.NaN)), 1.1);
        assertThat(taken.loadFactor()).isEqualTo(1.1);
        assertThat(taken.words(Settings.DEFAULTS.figures())).isEqualTo("60 jobs");
    }
}
