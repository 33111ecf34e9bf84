package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.InventedShop;
import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.findings.FindVerdicts;
import benchtrue.findings.Restorations;
import benchtrue.findings.Verdict;
import benchtrue.hours.SplitHours;
import benchtrue.reconcile.Ledger;
import benchtrue.sample.Loads;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Slowing;
import benchtrue.sample.Tidiness;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Large visits judged as wholes in invented shops of 1,200 tickets in which every quote is right and no sign makes a difference. */
class RestorationsTruthTest {
    private static final Settings SETTINGS = InventedShop.settings("en", "EUR", Disclosure.SHOWN);

    @Test
    void hardlyAnyRestorationsAreCalledWhereEveryQuoteIsRight() {
        hold(SeedTable.of("restorations-few", 31, 2), 1);
    }

    @Test
    @Tag("proof")
    void hardlyAnyRestorationsAreCalledInFortyShopsWhereEveryQuoteIsRight() {
        hold(SeedTable.of("restorations", 31_001, 40), 8); // 97 % of the time, where one shop in ten calls any
    }

    private static void hold(SeedTable table, int mostShops) {
        double[] sums = table.sums(RestorationsTruthTest::shop);
        String text = String.format(
                Locale.ROOT,
                "%s: %.0f of %.0f groups called, in %.0f shops, %.0f of them for a first sign; %.3f of the ranges of %.0f"
                        + " groups hold 1",
                table.range(),
                sums[0],
                sums[1],
                sums[2],
                sums[5],
                sums[3] / sums[4],
                sums[4]);
        System.getLogger("benchtrue").log(System.Logger.Level.INFO, text);
        assertThat(sums[4]).as("groups judged against their quotes").isPositive();
        assertThat(sums[2]).as(text).isLessThanOrEqualTo(mostShops);
        assertThat(sums[3] / sums[4]).as(text).isGreaterThanOrEqualTo(0.85);
    }

    private static double[] shop(long seed) {
        KnownShop known = KnownShop.of(
                seed,
                (SampleOptions options) ->
                        options.with(Tidiness.TIDY).with(Slowing.NONE).with(Loads.EXACTLY_ONE));
        Ledger ledger = PlantedCause.withOthersSigns(known.ledger(), new Random(seed));
        CostedLines costs = new CostLines().cost(new SplitHours().split(ledger, SETTINGS), SETTINGS);
        List<Restorations> groups = new FindVerdicts().find(costs, SETTINGS).restorations();
        long called = groups.stream().filter(RestorationsTruthTest::isCalled).count();
        List<Restorations> judged = groups.stream()
                .filter(group -> group.by() != Restorations.By.FIRST_SIGN && !Double.isNaN(group.lower()))
                .toList();
        long hold = judged.stream()
                .filter(group -> group.lower() <= 1 && group.upper() >= 1)
                .count();
        long signs = groups.stream()
                .filter(group -> isCalled(group) && group.by() == Restorations.By.FIRST_SIGN)
                .count();
        return new double[] {called, groups.size(), called > 0 ? 1 : 0, hold, judged.size(), signs};
    }

    private static boolean isCalled(Restorations group) {
        return group.standing() == Verdict.UNDER_QUOTED || group.standing() == Verdict.OVER_QUOTED;
    }
}
