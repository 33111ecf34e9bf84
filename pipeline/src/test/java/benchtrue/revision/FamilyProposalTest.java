package benchtrue.revision;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopBuilder;
import benchtrue.ShopSettings;
import benchtrue.costing.AtShopRate;
import benchtrue.costing.CostedLines;
import benchtrue.findings.Findings;
import benchtrue.findings.FoundRepairs;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.SurelyOwnJobs;
import benchtrue.findings.Verdict;
import benchtrue.hours.PlainJobLines;
import benchtrue.revision.ProposeRevision.Price;
import benchtrue.settings.FamilyPolicy;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.RepairType;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A shop that asks other hours or another rate of one family of repairs. */
class FamilyProposalTest {
    private static final long RATE = 100 * Money.UNIT;
    private static final int REFRET = 0;
    private static final int SETUP = 1;

    private static Policy policy(FamilyPolicy... families) {
        Policy d = Policy.DEFAULTS;
        return new Policy(
                Policy.Rule.LARGER, 0.50, d.largestStep(), d.priceRounding(), d.fallBack(), List.of(families));
    }

    private static FamilyPolicy fretwork(Policy.Rule rule, double coverage, long rate, long rounding) {
        return new FamilyPolicy(
                "fretwork",
                Optional.ofNullable(rule),
                Double.isNaN(coverage) ? OptionalDouble.empty() : OptionalDouble.of(coverage),
                rate,
                rounding,
                1);
    }

    private static RepairType type(String key, String family) {
        return new RepairType(
                key, key, family, 10 * Hours.SECONDS, 10 * RATE, Absent.AMOUNT, List.of(), Absent.AMOUNT, 0);
    }

    /** Ten refrets and ten setups: six of each take 11 hours, four take 12. */
    private static List<ProposedChange> proposed(Policy policy) {
        ShopBuilder shop = new ShopBuilder().type(type("refret", "fretwork")).type(type("setup", "setup"));
        for (int i = 0; i < 20; i++) {
            shop.ticket("T" + i).line(i < 10 ? "refret" : "setup", 10).logged("ada", "1", i % 10 < 6 ? 11 : 12);
        }
        CostedLines costs = AtShopRate.of(PlainJobLines.of(shop.build()), RATE);
        Settings settings = new ShopSettings().policy(policy).build();
        Findings found = FoundRepairs.of(List.of(finding(REFRET), finding(SETUP)), SurelyOwnJobs.of(costs.jobs()));
        return new ProposeRevision()
                .propose(costs, found, settings, AlreadyDecided.NOTHING)
                .changes();
    }

    private static RepairFinding finding(int type) {
        double load = 1.14;
        return new RepairFinding(
                type, 10, 10, 0, 0, load, load, load, load, 0.5, 0.01, 0, 0, 0, Verdict.UNDER_QUOTED, "");
    }

    @Test
    void theCoverageOfAFamilyMovesItsOwnRepairsOnly() {
        List<ProposedChange> shop = proposed(policy());
        List<ProposedChange> own = proposed(policy(fretwork(null, 0.90, Absent.AMOUNT, Absent.AMOUNT)));
        assertThat(shop.get(REFRET).proposedSeconds()).isEqualTo((long) (11.5 * Hours.SECONDS));
        assertThat(own.get(REFRET).proposedSeconds()).isEqualTo(12 * Hours.SECONDS);
        assertThat(own.get(REFRET).basis()).startsWith("90\u00a0% of");
        assertThat(own.get(SETUP)).isEqualTo(shop.get(SETUP));
    }

    @Test
    void aFamilyThatOnlyHasToPayForItselfIsProposedTheMean() {
        FamilyPolicy breakEven = fretwork(Policy.Rule.BREAK_EVEN, 0.95, Absent.AMOUNT, Absent.AMOUNT);
        ProposedChange change = proposed(policy(breakEven)).get(REFRET);
        assertThat(change.proposedSeconds()).isEqualTo((long) (11.5 * Hours.SECONDS));
        assertThat(change.basis()).contains("took together: 1.14");
    }

    @Test
    void theRateAndRoundingOfAFamilyMoveItsPriceAndItsMoneyAYear() {
        List<ProposedChange> shop = proposed(policy());
        List<ProposedChange> own = proposed(policy(fretwork(null, Double.NaN, 131 * Money.UNIT, 5 * Money.UNIT)));
        assertThat(shop.get(REFRET).proposedLabour()).isEqualTo(1_150 * Money.UNIT);
        assertThat(own.get(REFRET).proposedSeconds()).isEqualTo(shop.get(REFRET).proposedSeconds());
        assertThat(own.get(REFRET).proposedLabour()).isEqualTo(1_505 * Money.UNIT);
        assertThat(own.get(REFRET).annualEffect())
                .isEqualTo((long) (505 * Money.UNIT * own.get(REFRET).grounds().jobsAYear()));
        assertThat(own.get(SETUP)).isEqualTo(shop.get(SETUP));
    }

    @Test
    void aTraitIsChargedAtTheRateOfTheFamilyThatItMakesLonger() {
        Policy policy = policy(fretwork(null, Double.NaN, 131 * Money.UNIT, 5 * Money.UNIT));
        assertThat(Price.ofHours("fretwork", Hours.SECONDS, RATE, policy)).isEqualTo(130 * Money.UNIT);
        assertThat(Price.ofHours("setup", Hours.SECONDS, RATE, policy)).isEqualTo(100 * Money.UNIT);
    }
}
