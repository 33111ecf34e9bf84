package benchtrue.revision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.RepairType;
import java.math.BigDecimal;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProposeRevisionTest {
    private static final long RATE = 100 * Money.UNIT;

    private static long seconds(double hours) {
        return Hours.seconds(BigDecimal.valueOf(hours));
    }

    private static RepairType type(double book, String family, double least, List<String> hazards) {
        long leastSeconds = Double.isNaN(least) ? Absent.AMOUNT : seconds(least);
        return new RepairType(
                "job", "job", family, seconds(book), (long) (book * RATE), leastSeconds, hazards, Absent.AMOUNT, 0);
    }

    private static RepairType fretwork(double book) {
        return type(book, "fretwork", Double.NaN, List.of());
    }

    private static Findings found(CostedLines costs, double load, Verdict verdict) {
        return FoundRepairs.of(
                List.of(new RepairFinding(0, 20, 20, 0, 0, load, load, load, load, 0.5, 0.01, 0, 0, 0, verdict, "")),
                SurelyOwnJobs.of(costs.jobs()));
    }

    private static Verdict verdict(double load) {
        return load > 1.05 ? Verdict.UNDER_QUOTED : load < 0.95 ? Verdict.OVER_QUOTED : Verdict.ON_THE_MARK;
    }

    private static Settings rule(Policy.Rule rule) {
        return new ShopSettings()
                .policy(new Policy(rule, 0.60, 0.25, 10_000, Policy.FallBack.WHEN_BEATEN))
                .build();
    }

    private static ProposedChange meanProposal(RepairType type, double load) {
        CostedLines costs =
                AtShopRate.of(PlainJobLines.of(new ShopBuilder().type(type).build()), RATE);
        return new ProposeRevision()
                .propose(costs, found(costs, load, verdict(load)), rule(Policy.Rule.BREAK_EVEN), AlreadyDecided.NOTHING)
                .changes()
                .get(0);
    }

    @ParameterizedTest
    @CsvSource({
        // book, load, proposed: tenths below two hours, quarters from there
        "1.5, 1.15, 1.7",
        "1.0, 0.87, 0.9",
        "10, 1.18, 11.75",
        "1.8, 1.12, 2.0",
        "4, 0.88, 3.5",
    })
    void hoursAreProposedOnTheGridOfThePriceBook(double book, double load, double proposed) {
        ProposedChange change = meanProposal(fretwork(book), load);
        assertThat(change.proposedSeconds()).isEqualTo(seconds(proposed));
        assertThat(change.proposedLabour()).isEqualTo((long) (proposed * RATE));
        assertThat(change.heldBecause()).isEmpty();
    }

    @Test
    void aLongStepIsCutAndTheRestCarriedForward() {
        ProposedChange change = meanProposal(fretwork(10), 1.60);
        assertThat(change.proposedSeconds()).isEqualTo(seconds(12.5));
        assertThat(change.heldBecause()).contains("at most 25\u00a0%", "16.00\u00a0h", "carried forward");
        assertThat(meanProposal(fretwork(10), 0.5).proposedSeconds()).isEqualTo(seconds(7.5));
    }

    @Test
    void tooFewJobsChangeNothing() {
        CostedLines costs = AtShopRate.of(
                PlainJobLines.of(new ShopBuilder().type(fretwork(10)).build()), RATE);
        ProposedChange change = new ProposeRevision()
                .propose(costs, found(costs, 1.6, Verdict.TOO_FEW_JOBS), Settings.DEFAULTS, AlreadyDecided.NOTHING)
                .changes()
                .get(0);
        assertThat(change.proposedSeconds()).isEqualTo(change.bookSeconds());
        assertThat(change.heldBecause()).contains("too few jobs");
    }

    @Test
    void whatTheOwnerKeepsIsNotAskedAgainBeforeItsDay() {
        CostedLines costs = AtShopRate.of(
                PlainJobLines.of(new ShopBuilder().type(fretwork(10)).build()), RATE);
        ProposedChange silent = kept(costs, "2026-11-01");
        assertThat(silent.proposedSeconds()).isEqualTo(silent.bookSeconds());
        assertThat(silent.heldBecause()).isEqualTo("kept by you until 1 Nov 2026: new press on order");
        assertThat(silent.grounds().shortening()).isEqualTo(ProposalInputs.Shortening.NO_CHANGE);
        assertThat(kept(costs, "2026-10-31").proposedSeconds()).isEqualTo(seconds(12.5));
    }

    private static ProposedChange kept(CostedLines costs, String until) {
        List<Kept> kept = List.of(new Kept("job", ShopBuilder.day(until), "new press on order"));
        return new ProposeRevision()
                .propose(
                        costs,
                        found(costs, 1.3, Verdict.UNDER_QUOTED),
                        rule(Policy.Rule.BREAK_EVEN),
                        new AlreadyDecided(kept, List.of()))
                .changes()
                .get(0);
    }

    @Test
    void aBookThatIsNearlyRightStays() {
        assertThat(meanProposal(fretwork(10), 1.04).heldBecause()).isEqualTo("within 5\u00a0% of the book");
    }

    @Test
    void hazardousWorkIsHeldForTheOwnerAndNeverShortened() {
        ProposedChange change = meanProposal(type(10, "setup", 5, List.of("solvent", "flammable-finish")), 0.7);
        assertThat(change.proposedSeconds()).isEqualTo(seconds(10));
        assertThat(change.heldBecause()).contains("solvent, flammable-finish", "yours to decide");
        assertThat(meanProposal(type(10, "setup", 5, List.of("solvent")), 1.2).proposedSeconds())
                .isEqualTo(seconds(12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"structural", "finish"})
    void structuralAndFinishWorkWithoutShortestSafeHoursIsNeverShortened(String family) {
        assertThat(meanProposal(type(10, family, Double.NaN, List.of()), 0.7).proposedSeconds())
                .isEqualTo(seconds(10));
        assertThat(meanProposal(type(10, family, 4, List.of()), 0.8).proposedSeconds())
                .isEqualTo(seconds(8));
    }

    @Test
    void nothingGoesBelowTheShortestSafeHours() {
        ProposedChange change = meanProposal(type(10, "structural", 9.1, List.of()), 0.8);
        assertThat(change.proposedSeconds()).isEqualTo(seconds(9.25));
        assertThat(change.heldBecause()).contains("shortest safe hours (9.10\u00a0h)");
    }

    @Test
    void aBookBelowItsOwnShortestSafeHoursIsRaisedToThem() {
        ProposedChange change = meanProposal(type(4, "finish", 6, List.of()), 1.1);
        assertThat(change.proposedSeconds()).isEqualTo(seconds(6));
        assertThat(change.heldBecause()).contains("raised to the shortest safe hours");
    }

    @Test
    void theLeastChargeHolds() {
        RepairType small = new RepairType(
                "job", "job", "setup", seconds(1), 100 * Money.UNIT, Absent.AMOUNT, List.of(), 95 * Money.UNIT, 0);
        assertThat(meanProposal(small, 0.8).proposedLabour()).isEqualTo(95 * Money.UNIT);
    }

    @Test
    void theLargerOfTheMeanAndTheShareThatFitsIsProposed() {
        ShopBuilder shop = new ShopBuilder().type(fretwork(10));
        for (int i = 0; i < 10; i++) {
            shop.ticket("T" + i).line("job", 10).logged("ada", "1", i < 5 ? 8 : 12);
        }
        CostedLines costs = AtShopRate.of(PlainJobLines.of(shop.build()), RATE);
        Findings even = found(costs, 1.0, Verdict.ON_THE_MARK);
        assertThat(proposed(costs, even, Policy.Rule.BREAK_EVEN)).isEqualTo(seconds(10));
        assertThat(proposed(costs, even, Policy.Rule.COVERAGE)).isEqualTo(seconds(12));
        assertThat(proposed(costs, even, Policy.Rule.LARGER)).isEqualTo(seconds(12));
        assertThat(proposed(costs, found(costs, 1.25, Verdict.UNDER_QUOTED), Policy.Rule.LARGER))
                .isEqualTo(seconds(12.5));
    }

    private static long proposed(CostedLines costs, Findings findings, Policy.Rule rule) {
        return new ProposeRevision()
                .propose(costs, findings, rule(rule), AlreadyDecided.NOTHING)
                .changes()
                .get(0)
                .proposedSeconds();
    }

    @Test
    void theOwnerSeesHowManyJobsFitBeforeAndAfterAndWhatItBringsAYear() {
        ShopBuilder shop = new ShopBuilder().type(fretwork(10));
        for (int i = 0; i < 10; i++) {
            shop.ticket("T" + i).line("job", 10).logged("ada", "1", i < 3 ? 9 : 12);
        }
        CostedLines costs = AtShopRate.of(PlainJobLines.of(shop.build()), RATE);
        ProposedChange change = new ProposeRevision()
                .propose(costs, found(costs, 1.11, Verdict.UNDER_QUOTED), Settings.DEFAULTS, AlreadyDecided.NOTHING)
                .changes()
                .get(0);
        assertThat(change.coverageBefore()).isEqualTo(0.3, within(1e-12));
        assertThat(change.coverageAfter()).isEqualTo(1.0, within(1e-12));
        assertThat(change.annualEffect()).isEqualTo(10 * 200 * Money.UNIT);
        assertThat(change.basis()).isEqualTo("60\u00a0% of 20 jobs fit at 1.20 hours per quoted hour");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void noProposalEverBreaksAGuardRail(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<String> families = List.of("setup", "fretwork", "structural", "finish");
        for (int round = 0; round < 2_000; round++) {
            double book = (1 + random.nextInt(1_500)) / 100.0;
            double least = random.nextBoolean() ? Double.NaN : Math.round(book * random.nextInt(20, 101)) / 100.0;
            RepairType type = type(
                    book, families.get(random.nextInt(4)), least, random.nextInt(3) == 0 ? List.of("dust") : List.of());
            double load = 0.3 + random.nextDouble() * 2;
            String at = "seed %d round %d %s load %s".formatted(seed, round, type, load);
            long proposed = meanProposal(type, load).proposedSeconds();
            long today = type.bookSeconds();
            assertThat(proposed / (double) today).as(at).isBetween(0.75 - 1e-9, 1.25 + 1e-9);
            assertThat((proposed - today) * (load - 1) >= 0).as(at).isTrue();
            if (Absent.has(type.leastSeconds())) {
                assertThat(proposed).as(at).isGreaterThanOrEqualTo(type.leastSeconds());
            }
            boolean mayShorten = type.hazards().isEmpty()
                    && (Absent.has(type.leastSeconds())
                            || !List.of("structural", "finish").contains(type.family()));
            assertThat(mayShorten || proposed >= today).as(at).isTrue();
            assertThat(proposed == today || proposed % (proposed < 7_200 ? 360 : 900) == 0)
                    .as(at)
                    .isTrue();
        }
    }
}
