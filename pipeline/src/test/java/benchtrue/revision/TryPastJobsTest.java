package benchtrue.revision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopBuilder;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.LineState;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TryPastJobsTest {
    private static final LocalDate CUT_OFF = LocalDate.of(2026, 4, 1);
    private static final int DAY_BEFORE = (int) CUT_OFF.toEpochDay() - 1;

    /** Refrets at 1.3 hours and setups at 1.0 hours per quoted hour, one of each a week from January 2025 on. */
    private static ShopBuilder shop() {
        SplittableRandom random = new SplittableRandom(7);
        ShopBuilder shop = new ShopBuilder().asOf("2026-10-31").book("2020-01-01");
        shop.type("refret", 10).type("setup", 2);
        for (int week = 0; week < 90; week++) {
            String opened = LocalDate.of(2025, 1, 6).plusWeeks(week).toString();
            shop.ticket("T%02d".formatted(week)).opened(opened);
            double scatter = 0.8 + 0.4 * random.nextDouble();
            shop.line("refret", 10).logged("ada", "1", rounded(13 * scatter));
            shop.line("setup", 2).logged("ada", "2", rounded(2 * (1.8 - scatter)));
        }
        return shop;
    }

    private static double rounded(double hours) {
        return StrictMath.rint(100 * hours) / 100;
    }

    private static JobLines jobs(ShopBuilder shop) {
        return new SplitHours().split(shop.build(), Settings.DEFAULTS);
    }

    private static List<FactorsAsOf> factors(ShopBuilder shop, TryPastJobs.Known known) {
        return new TryPastJobs(jobs(shop), Settings.DEFAULTS, known).factors(List.of(CUT_OFF));
    }

    /** A ticket of before the cut-off on which things are recorded later, and what else the future brings. */
    private static ShopBuilder withoutFuture() {
        ShopBuilder shop = shop();
        shop.ticket("open-then").opened("2026-03-20").closed("2026-05-20").line("refret", 10);
        shop.logged("ada", "1", 4);
        return shop;
    }

    private static Map<String, Consumer<ShopBuilder>> futures() {
        Map<String, Consumer<ShopBuilder>> futures = new LinkedHashMap<>();
        futures.put("hours worked later", shop -> shop.loggedOn("2026-04-02", "ada", "1", 400));
        futures.put(
                "a later price book",
                shop -> shop.book("2026-04-01").type("refret", 40).type("setup", 0.5));
        futures.put(
                "a line found later",
                shop -> shop.line("refret", 1).foundOn("2026-04-03").loggedOn("2026-04-05", "ada", "2", 50));
        futures.put("jobs of later", shop -> {
            for (int i = 0; i < 30; i++) {
                shop.ticket("later-" + i).opened("2026-04-01").line("setup", 2).logged("ada", "1", 23);
            }
        });
        futures.put(
                "a return of later",
                shop -> shop.ticket("back")
                        .opened("2026-05-01")
                        .line("refret", 2)
                        .putsRight("T10", "1", null)
                        .logged("ada", "1", 90));
        return futures;
    }

    private static boolean moves(Consumer<ShopBuilder> future, TryPastJobs.Known known) {
        ShopBuilder planted = withoutFuture();
        future.accept(planted);
        double[][] without = all(factors(withoutFuture(), known).get(0));
        double[][] with = all(factors(planted, known).get(0));
        return !Arrays.deepEquals(without, with);
    }

    private static double[][] all(FactorsAsOf factors) {
        List<double[]> all = new ArrayList<>();
        for (PastMethod method : PastMethod.values()) {
            for (double quoted : new double[] {2, 10}) {
                all.add(IntStream.range(0, 2)
                        .mapToDouble(type -> factors.raw(method).of(type, quoted))
                        .toArray());
                all.add(IntStream.range(0, 2)
                        .mapToDouble(type -> factors.railed(method).of(type, quoted))
                        .toArray());
            }
        }
        return all.toArray(double[][]::new);
    }

    @Test
    void nothingThatComesAfterTheCutOffMovesAFactor() {
        futures()
                .forEach((name, future) ->
                        assertThat(moves(future, LedgerAsOf::of)).as(name).isFalse());
    }

    @Test
    void aFilterThatLetsTheFutureThroughIsCaught() {
        TryPastJobs.Known everything = (ledger, from, day) -> ledger;
        futures()
                .forEach((name, future) ->
                        assertThat(moves(future, everything)).as(name).isTrue());
        TryPastJobs.Known entriesOfLater = (ledger, from, day) -> {
            Ledger then = LedgerAsOf.of(ledger, from, day);
            Ledger late = LedgerAsOf.of(ledger, from, day + 2);
            return new Ledger(
                    day,
                    then.repairTypes(),
                    then.technicians(),
                    then.parts(),
                    then.books(),
                    late.tickets(),
                    late.lines(),
                    late.time(),
                    then.partUses(),
                    then.wages(),
                    then.paidHours(),
                    then.overheads(),
                    late.waits(),
                    then.completeness(),
                    then.missing());
        };
        assertThat(moves(futures().get("hours worked later"), entriesOfLater)).isTrue();
    }

    @Test
    void aJobClosedLaterWasOpenThenWithItsHoursSoFar() {
        ShopBuilder shop = withoutFuture();
        shop.loggedOn("2026-04-02", "ada", "1", 9);
        JobLines then = jobs(LedgerAsOf.of(shop.build(), Integer.MIN_VALUE, DAY_BEFORE));
        int last = then.size() - 1;
        assertThat(then.state(last)).isEqualTo(LineState.OPEN);
        assertThat(then.actualSeconds(last)).isEqualTo(4 * 3_600);
        assertThat(then.ledger().tickets().size()).isEqualTo(66);
    }

    private static JobLines jobs(Ledger ledger) {
        return new SplitHours().split(ledger, Settings.DEFAULTS);
    }

    @Test
    void workOnALineThatWasNotQuotedYetIsUnquotedWorkOfItsType() {
        ShopBuilder shop = shop();
        shop.ticket("found").opened("2026-03-20").line("setup", 2).logged("ada", "1", 2);
        shop.line("refret", 10).foundOn("2026-04-10").logged("ada", "2", 3);
        JobLines then = jobs(LedgerAsOf.of(shop.build(), Integer.MIN_VALUE, DAY_BEFORE));
        assertThat(then.unquoted()).hasSize(1);
        assertThat(then.unquoted().get(0).seconds()).isEqualTo(3 * 3_600);
    }

    @Test
    void everyQuarterWithAYearOfHistoryIsACutOff() {
        BackTest test = new TryPastJobs(jobs(shop()), Settings.DEFAULTS).test();
        assertThat(test.cutOffs().stream().map(c -> LocalDate.ofEpochDay(c.day())))
                .containsExactly(LocalDate.of(2026, 4, 1), LocalDate.of(2026, 7, 1));
    }

    @Test
    void aBookThatIsThreeTenthsTooLowForRefretsIsBeatenByTheProposal() {
        BackTest test = new TryPastJobs(jobs(shop()), Settings.DEFAULTS).test();
        assertThat(test.used()).isEqualTo(PastMethod.PROPOSAL);
        PastScore book = test.total(PastMethod.KEEP_THE_BOOK);
        PastScore proposal = test.total(PastMethod.PROPOSAL);
        assertThat(proposal.loss()).isLessThan(0.6 * book.loss());
        assertThat(book.hoursBias()).isEqualTo(-0.2, within(0.03));
        assertThat(proposal.jobs()).isEqualTo(book.jobs()).isEqualTo(2 * 25);
        assertThat(test.sentence()).contains("Tried on 50 past jobs of 2 quarters", "the proposal came nearer");
    }

    @Test
    void ticketsLoggedAsAWholeAreHeldAgainstTheirTotal() {
        ShopBuilder shop = shop();
        shop.ticket("whole")
                .opened("2026-05-02")
                .line("refret", 10)
                .line("setup", 2)
                .whole("ada", 17);
        ScoredJobs scored = ScoredJobs.of(jobs(shop));
        int day = ShopBuilder.day("2026-05-02");
        List<ScoredJobs.Job> quoted = scored.quoted(day, day + 1);
        assertThat(quoted).hasSize(1);
        assertThat(quoted.get(0).lines()).hasSize(2);
        double[] ones = {1, 1};
        PastScore score = scored.score(quoted, (type, hours) -> 1, ones, new double[] {0.6, 0.6});
        assertThat(score.lines()).isEqualTo(2);
        assertThat(score.loss()).isEqualTo(0.6 * 5, within(1e-9));
        assertThat(score.hoursBias()).isEqualTo(12 / 17.0 - 1, within(1e-9));
        double refrets = scored.score(quoted, (type, hours) -> 1, ones, new double[] {0.8, 0.5})
                .loss();
        double together = (10 * 0.8 + 2 * 0.5) / 12;
        assertThat(refrets).isEqualTo(together * 5, within(1e-9));
    }

    @Test
    void aSimplerMethodReplacesTheProposalOnlyBeyondChanceAndByTheShopsRule() {
        List<CutOff> surely = List.of(cutOff(40, 39, 36, 30), cutOff(40, 38, 35, 30), cutOff(40, 39, 36, 30));
        List<CutOff> byChance = List.of(cutOff(40, 50, 60, 30), cutOff(40, 50, 20, 30), cutOff(40, 50, 39, 30));
        assertThat(BackTest.standsOn(surely, Policy.Rule.COVERAGE)).isEqualTo(PastMethod.PLAIN_AVERAGE);
        assertThat(BackTest.standsOn(surely, Policy.Rule.LARGER)).isEqualTo(PastMethod.PLAIN_AVERAGE);
        assertThat(BackTest.standsOn(byChance, Policy.Rule.COVERAGE)).isEqualTo(PastMethod.PROPOSAL);
        assertThat(BackTest.standsOn(surely.subList(0, 1), Policy.Rule.COVERAGE))
                .isEqualTo(PastMethod.PROPOSAL);
        assertThat(BackTest.standsOn(List.of(), Policy.Rule.COVERAGE)).isEqualTo(PastMethod.PROPOSAL);
    }

    @Test
    void noProposalRestsOnAMethodThatMissedByMoreWithinTheGuardRails() {
        int fellBack = 0;
        for (long seed = 0; seed < 500; seed++) {
            java.util.SplittableRandom random = new java.util.SplittableRandom(seed);
            double better = random.nextDouble(-4, 8);
            List<CutOff> cutOffs = java.util.stream.IntStream.range(0, 2 + random.nextInt(8))
                    .mapToObj(i ->
                            cutOff(40, 40, 40 - better + random.nextDouble(-3, 3), 30, random.nextDouble(0.9, 1.1)))
                    .toList();
            for (Policy.Rule rule : Policy.Rule.values()) {
                PastMethod used = BackTest.standsOn(cutOffs, rule);
                BackTest test = new BackTest(cutOffs, rule, used, "");
                if (used != PastMethod.PROPOSAL) {
                    fellBack++;
                    assertThat(test.railedTotal(used).missed(rule))
                            .as("seed " + seed)
                            .isLessThan(test.railedTotal(PastMethod.PROPOSAL).missed(rule));
                }
            }
        }
        assertThat(fellBack).isGreaterThan(50);
    }

    @Test
    void aPlainAverageThatFallsBelowBreakEvenDoesNotReplaceWhatPaysForItself() {
        List<CutOff> below =
                List.of(cutOff(40, 39, 36, 30, 0.93), cutOff(40, 38, 35, 30, 0.94), cutOff(40, 39, 36, 30, 0.93));
        assertThat(BackTest.standsOn(below, Policy.Rule.BREAK_EVEN)).isEqualTo(PastMethod.PROPOSAL);
        assertThat(BackTest.standsOn(below, Policy.Rule.COVERAGE)).isEqualTo(PastMethod.PLAIN_AVERAGE);
    }

    private static CutOff cutOff(double proposal, double book, double average, double median) {
        return cutOff(proposal, book, average, median, 1);
    }

    private static CutOff cutOff(double proposal, double book, double average, double median, double averageHours) {
        Map<PastMethod, PastScore> scores = new EnumMap<>(PastMethod.class);
        scores.put(PastMethod.PROPOSAL, score(proposal, 1));
        scores.put(PastMethod.KEEP_THE_BOOK, score(book, 1));
        scores.put(PastMethod.PLAIN_AVERAGE, score(average, averageHours));
        scores.put(PastMethod.UNPOOLED_MEDIAN, score(median, 1));
        return new CutOff(DAY_BEFORE + 1, scores, scores);
    }

    private static PastScore score(double loss, double predictedHours) {
        return new PastScore(40, 40, 40, 20, loss, predictedHours, 1, 40, loss);
    }

    @Test
    void theOwnersSettingKeepsTheProposalEvenWhereARivalDidBetter() {
        Policy policy = new Policy(Policy.Rule.LARGER, 0.95, 0.25, 10_000, Policy.FallBack.NEVER);
        assertThat(policy.fallBack()).isEqualTo(Policy.FallBack.NEVER);
        BackTest test = DescribePastJobs.tell(List.of(cutOff(40, 50, 60, 30)), PastMethod.PROPOSAL, Settings.DEFAULTS);
        assertThat(test.sentence())
                .contains("each repair's middle job came nearer to them than the proposal, but not beyond chance");
    }

    @Test
    void visitsOfTheCutOffItselfDoNotMoveTheWindowBeforeIt() {
        int[] opened = {1, 2, 5, 5, 5, 5, 5, 9};
        assertThat(TryPastJobs.before(opened, 4)).isEqualTo(2);
        assertThat(TryPastJobs.before(opened, 5)).isEqualTo(7);
        assertThat(TryPastJobs.before(opened, 0)).isZero();
        assertThat(TryPastJobs.before(opened, 10)).isEqualTo(8);
    }
}
