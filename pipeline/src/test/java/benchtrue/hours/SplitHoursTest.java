package benchtrue.hours;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopBuilder;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.LineState;
import benchtrue.shop.RepairType;
import benchtrue.shop.ReturnReason;
import benchtrue.shop.TimeKind;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class SplitHoursTest {
    private static final long HOUR = 3_600;

    private static ShopBuilder shop() {
        return new ShopBuilder().type("refret", 10).type("nut", 1.5).type("setup", 1, "setup");
    }

    private static JobLines split(ShopBuilder shop) {
        return new SplitHours().split(shop.build(), Settings.DEFAULTS);
    }

    private static long placed(JobLines jobs, String term) {
        return jobs.placed().stream()
                .filter(t -> t.name().equals(term))
                .mapToLong(Balance.Term::amount)
                .sum();
    }

    @Test
    void hoursThatNameALineAreThatLines() {
        JobLines jobs = split(shop().ticket("1")
                .line("refret", 10)
                .line("nut", 1.5)
                .logged("ann", "1", 12)
                .logged("bob", "2", 1));
        assertThat(jobs.labelledSeconds(0)).isEqualTo(12 * HOUR);
        assertThat(jobs.labelledSeconds(1)).isEqualTo(HOUR);
        assertThat(jobs.splitSeconds(0)).isZero();
        assertThat(jobs.evidence(0)).isEqualTo(SplitEvidence.LOGGED);
        assertThat(jobs.ledger().technicians().name(jobs.mainTechnician(1))).isEqualTo("bob");
    }

    @Test
    void hoursOnATicketWithOneLineAreAsGoodAsLogged() {
        JobLines jobs = split(shop().ticket("1").line("refret", 10).whole("ann", 12));
        assertThat(jobs.actualSeconds(0)).isEqualTo(12 * HOUR);
        assertThat(jobs.evidence(0)).isEqualTo(SplitEvidence.LOGGED);
        assertThat(jobs.model()
                        .loads(new double[] {1})[jobs.ledger().repairTypes().code("refret")])
                .isCloseTo(1.2, within(1e-12));
    }

    @Test
    void theOverrunGoesToTheRepairThatAlwaysOverruns() {
        ShopBuilder shop = shop();
        for (int i = 0; i < 20; i++) {
            shop.ticket("a" + i).line("refret", 10).whole("ann", 15);
            shop.ticket("b" + i).line("setup", 1).whole("ann", 1);
        }
        JobLines jobs =
                split(shop.ticket("c").line("refret", 10).line("setup", 1).whole("ann", 16));
        assertThat(jobs.actualSeconds(jobs.size() - 2) / (double) HOUR).isCloseTo(15, within(0.1));
        assertThat(jobs.actualSeconds(jobs.size() - 1) / (double) HOUR).isCloseTo(1, within(0.1));
        assertThat(jobs.evidence(jobs.size() - 1)).isEqualTo(SplitEvidence.SPLIT);
    }

    @Test
    void aFewMinutesOnTheTicketFillTheLineThatStillLacksHours() {
        JobLines jobs = split(shop().ticket("1")
                .line("refret", 10)
                .line("nut", 1.5)
                .logged("ann", "1", 10)
                .whole("ann", 0.1));
        assertThat(jobs.splitSeconds(0) + jobs.splitSeconds(1)).isEqualTo(360);
        assertThat(jobs.splitSeconds(1)).isGreaterThan(jobs.splitSeconds(0));
        assertThat(jobs.evidence(0)).isEqualTo(SplitEvidence.PARTLY_SPLIT);
    }

    @Test
    void aVoidTicketKeepsWhatItsEntriesNameAndSplitsNothing() {
        JobLines jobs = split(shop().ticket("1")
                .line("refret", 10)
                .line("nut", 1)
                .voided()
                .logged("ann", "1", 1)
                .whole("ann", 2));
        assertThat(jobs.state(0)).isEqualTo(LineState.VOID);
        assertThat(jobs.actualSeconds(0)).isEqualTo(HOUR);
        assertThat(jobs.actualSeconds(1)).isZero();
        assertThat(placed(jobs, "on tickets without an accepted line")).isEqualTo(2 * HOUR);
        assertThat(jobs.judged(0)).isFalse();
    }

    @Test
    void aDeclinedLineTakesNoneOfTheTicketsTime() {
        JobLines jobs = split(
                shop().ticket("1").line("refret", 10).declined().line("nut", 1).whole("ann", 2));
        assertThat(jobs.state(0)).isEqualTo(LineState.DECLINED);
        assertThat(jobs.actualSeconds(0)).isZero();
        assertThat(jobs.actualSeconds(1)).isEqualTo(2 * HOUR);
    }

    @Test
    void timeOnATicketWhoseLinesWereAllDeclinedStandsInTheBalance() {
        JobLines jobs = split(shop().ticket("1").line("refret", 10).declined().whole("ann", 2));
        assertThat(placed(jobs, "on tickets without an accepted line")).isEqualTo(2 * HOUR);
        assertThat(placed(jobs, "on lines")).isZero();
    }

    @Test
    void timeOnATicketWithoutLinesStandsInTheBalance() {
        JobLines jobs = split(shop().ticket("1").whole("ann", 2));
        assertThat(placed(jobs, "on tickets without an accepted line")).isEqualTo(2 * HOUR);
    }

    @Test
    void aLineClosedYearsAgoIsJudgedAgainstTodaysBook() {
        JobLines jobs = split(new ShopBuilder()
                .book("2015-01-01")
                .type("refret", 8)
                .book("2026-01-01")
                .type("refret", 10)
                .ticket("1")
                .opened("2016-05-01")
                .line("refret", 9)
                .whole("ann", 12));
        assertThat(jobs.bookSecondsThen(0)).isEqualTo(8 * HOUR);
        assertThat(jobs.todayQuotedHours(0)).isCloseTo(9 * 10 / 8.0, within(1e-12));
        assertThat(jobs.judged(0)).isTrue();
    }

    @Test
    void anEntryThatNamesARepairTypeGoesToTheLineOfThatType() {
        JobLines jobs = split(shop().ticket("1")
                .line("refret", 10)
                .line("nut", 1.5)
                .did("ann", "nut", 2)
                .did("ann", "setup", 1));
        assertThat(jobs.labelledSeconds(1)).isEqualTo(2 * HOUR);
        assertThat(jobs.unquoted())
                .containsExactly(new UnquotedWork(0, jobs.ledger().repairTypes().code("setup"), HOUR));
        assertThat(placed(jobs, "unquoted work")).isEqualTo(HOUR);
    }

    @Test
    void anEntryThatNamesARepairTypeQuotedTwiceIsSharedByTheQuotes() {
        JobLines jobs = split(shop().ticket("1")
                .line("nut", 1)
                .line("nut", 2)
                .line("setup", 1)
                .did("ann", "nut", 6));
        assertThat(jobs.splitSeconds(0)).isEqualTo(2 * HOUR);
        assertThat(jobs.splitSeconds(1)).isEqualTo(4 * HOUR);
        assertThat(jobs.splitSeconds(2)).isZero();
    }

    @Test
    void anEntryAndItsCorrectionLeaveNothing() {
        JobLines jobs = split(shop().ticket("1")
                .line("refret", 10)
                .line("nut", 1.5)
                .logged("ann", "1", 3)
                .whole("ann", -3)
                .logged("ann", "2", 1));
        assertThat(jobs.actualSeconds(0)).isZero();
        assertThat(jobs.actualSeconds(1)).isEqualTo(HOUR);
        assertThat(placed(jobs, "on lines")).isEqualTo(HOUR);
    }

    @Test
    void oneSpraySessionOverFourBodiesIsSharedByTheirQuotes() {
        ShopBuilder shop = shop().type("refinish", 8, "finish");
        for (int i = 1; i <= 4; i++) {
            shop.ticket("t" + i).line("refinish", i).line("setup", 1);
        }
        JobLines jobs = split(shop.shared("ann", 10, "t1", "t2", "t3", "t4"));
        long sum = 0;
        for (int line = 0; line < jobs.size(); line++) {
            sum += jobs.splitSeconds(line);
        }
        assertThat(sum).isEqualTo(10 * HOUR);
        assertThat(jobs.splitSeconds(6)).isGreaterThan(jobs.splitSeconds(0));
        int entry = 0;
        assertThat(jobs.places().place(entry)).isEqualTo(EntryPlaces.Place.OVER_TICKETS);
        assertThat(Arrays.stream(jobs.places().sharedSeconds(entry)).sum()).isEqualTo(10 * HOUR);
    }

    @Test
    void handlingQuotingAndShopTimeStayApart() {
        JobLines jobs = split(shop().time("ann", TimeKind.SHOP, 4)
                .ticket("1")
                .line("nut", 1)
                .time("ann", TimeKind.HANDLING, 1)
                .time("ann", TimeKind.QUOTING, 2)
                .whole("ann", 3));
        assertThat(jobs.actualSeconds(0)).isEqualTo(3 * HOUR);
        assertThat(placed(jobs, "handling")).isEqualTo(HOUR);
        assertThat(placed(jobs, "quoting")).isEqualTo(2 * HOUR);
        assertThat(placed(jobs, "shop")).isEqualTo(4 * HOUR);
    }

    @Test
    void reworkHoursGoToTheRepairThatFailed() {
        JobLines jobs = split(shop().ticket("1")
                .line("refret", 10)
                .line("nut", 1.5)
                .logged("ann", "1", 12)
                .logged("ann", "2", 1)
                .ticket("2")
                .opened("2026-03-01")
                .line("refret", 0)
                .putsRight("1", "1", ReturnReason.OUR_FAULT)
                .whole("ann", 2));
        assertThat(jobs.reworkSeconds(0)).isEqualTo(2 * HOUR);
        assertThat(jobs.actualSeconds(2)).isEqualTo(2 * HOUR);
        assertThat(jobs.judged(2)).isFalse();
        int refret = jobs.ledger().repairTypes().code("refret");
        assertThat(jobs.model().loads(new double[] {1, 1})[refret]).isCloseTo(1.4, within(1e-12));
    }

    @Test
    void reworkOfAWholeTicketGoesToTheLineOfTheSameRepairElseIsShared() {
        ShopBuilder shop = shop().ticket("1").line("refret", 10).line("nut", 2).logged("ann", "1", 10);
        JobLines same = split(shop.ticket("2")
                .opened("2026-03-01")
                .putsRight("1")
                .line("nut", 0)
                .whole("ann", 1));
        assertThat(same.reworkSeconds(1)).isEqualTo(HOUR);
        assertThat(same.marked(1, LineMark.REWORK_WITHOUT_REASON)).isTrue();
        assertThat(same.marked(1, LineMark.REWORK_SHARED)).isFalse();
        JobLines other = split(shop.ticket("3")
                .opened("2026-04-01")
                .putsRight("1")
                .line("setup", 0)
                .whole("ann", 3));
        assertThat(other.reworkSeconds(0)).isEqualTo(9_000);
        assertThat(other.reworkSeconds(1)).isEqualTo(HOUR + 1_800);
        assertThat(other.marked(0, LineMark.REWORK_SHARED)).isTrue();
    }

    @Test
    void newDamageIsANewJob() {
        JobLines jobs = split(shop().ticket("1")
                .line("refret", 10)
                .whole("ann", 10)
                .ticket("2")
                .opened("2026-03-01")
                .line("refret", 10)
                .putsRight("1", "1", ReturnReason.NEW_DAMAGE)
                .whole("ann", 9));
        assertThat(jobs.reworkSeconds(0)).isZero();
        assertThat(jobs.judged(1)).isTrue();
    }

    @Test
    void aTicketClosedWithoutAMinuteOfBenchTimeIsNotAJobDoneInNoTime() {
        JobLines jobs = split(shop().ticket("1")
                .line("refret", 10)
                .ticket("2")
                .line("refret", 10)
                .whole("ann", 9));
        assertThat(jobs.judged(0)).isFalse();
        assertThat(jobs.marked(0, LineMark.NEVER_LOGGED)).isTrue();
        int refret = jobs.ledger().repairTypes().code("refret");
        assertThat(jobs.model().loads(new double[] {1, 1})[refret]).isCloseTo(0.9, within(1e-12));
    }

    @Test
    void aBlankQuoteTakesTheBooksHoursAndIsMarked() {
        JobLines jobs =
                split(shop().ticket("1").line("refret", 0).withoutQuotedHours().whole("ann", 9));
        assertThat(jobs.marked(0, LineMark.QUOTE_FROM_BOOK)).isTrue();
        assertThat(jobs.todayQuotedHours(0)).isEqualTo(10);
        assertThat(jobs.judged(0)).isTrue();
    }

    @Test
    void storageAndRushTakeNoBenchHoursAndOneOffWorkItsShare() {
        JobLines jobs = split(shop().ticket("1")
                .line("setup", 1)
                .line("setup", 3)
                .charged(ChargeKind.STORAGE)
                .line("one-off", 1)
                .line("setup", 1)
                .charged(ChargeKind.RUSH)
                .whole("ann", 4));
        assertThat(jobs.splitSeconds(1)).isZero();
        assertThat(jobs.splitSeconds(3)).isZero();
        assertThat(jobs.splitSeconds(2)).isGreaterThan(HOUR);
        assertThat(jobs.judged(2)).isFalse();
        assertThat(jobs.todayQuotedHours(2)).isNaN();
        assertThat(jobs.bookSecondsThen(2)).isEqualTo(Absent.AMOUNT);
    }

    @Test
    void anOpenLineGetsItsHoursSoFarAndIsNotJudged() {
        JobLines jobs = split(shop().ticket("1")
                .stillOpen()
                .line("refret", 10)
                .line("setup", 1)
                .whole("ann", 5));
        assertThat(jobs.state(0)).isEqualTo(LineState.OPEN);
        assertThat(jobs.actualSeconds(0) + jobs.actualSeconds(1)).isEqualTo(5 * HOUR);
        assertThat(jobs.judged(0)).isFalse();
        assertThat(jobs.model().loads(new double[] {1})[0]).isNaN();
    }

    @Test
    void repairsThatAlwaysComeTogetherAreNamedAsAPair() {
        ShopBuilder shop = shop();
        for (int i = 0; i < 30; i++) {
            shop.ticket("a" + i).line("refret", 10).line("nut", 1.5).whole("ann", 13);
            shop.ticket("b" + i).line("setup", 1).whole("ann", 1);
        }
        JobLines jobs = split(shop);
        assertThat(jobs.inseparable()).hasSize(1);
        InseparablePair pair = jobs.inseparable().get(0);
        assertThat(jobs.ledger().repairTypes().name(pair.first())).isEqualTo("nut");
        assertThat(jobs.ledger().repairTypes().name(pair.second())).isEqualTo("refret");
        assertThat(pair.jointLoad()).isCloseTo(13 / 11.5, within(1e-6));
        assertThat(pair.jointLines()).isEqualTo(60);
    }

    @Test
    void workOnALineTheCustomerDeclinedStaysWhereItWasLogged() {
        JobLines jobs = split(shop().ticket("1")
                .line("refret", 10)
                .declined()
                .line("nut", 1)
                .logged("ann", "1", 1)
                .did("ann", "refret", 2));
        assertThat(jobs.labelledSeconds(0)).isEqualTo(3 * HOUR);
        assertThat(jobs.unquoted()).isEmpty();
        assertThat(jobs.judged(0)).isFalse();
    }

    @Test
    void aPackageQuotedInOneFigureIsSplitByTheBookAndJudgesNoneOfItsLines() {
        JobLines jobs = split(shop().ticket("1")
                .line("nut", 3)
                .charged(ChargeKind.PACKAGE)
                .line("setup", 0)
                .charged(ChargeKind.PACKAGE)
                .whole("ann", 2.5));
        assertThat(jobs.splitSeconds(0) / (double) HOUR).isCloseTo(1.5, within(0.05));
        assertThat(jobs.judged(0)).isFalse();
        assertThat(jobs.judged(1)).isFalse();
    }

    @Test
    void aPackageOfOneLineIsJudgedByItsQuote() {
        JobLines jobs = split(
                shop().ticket("1").line("nut", 3).charged(ChargeKind.PACKAGE).whole("ann", 2.5));
        assertThat(jobs.judged(0)).isTrue();
    }

    @Test
    void aReturnOfAReturnIsCarriedToTheFirstJob() {
        JobLines jobs = split(shop().ticket("1")
                .line("refret", 10)
                .logged("ann", "1", 12)
                .ticket("2")
                .opened("2026-03-01")
                .line("refret", 0)
                .putsRight("1", "1", ReturnReason.OUR_FAULT)
                .whole("ann", 2)
                .ticket("3")
                .opened("2026-05-01")
                .line("refret", 0)
                .putsRight("2", "1", ReturnReason.PART)
                .whole("bob", 1));
        assertThat(jobs.reworkSeconds(0)).isEqualTo(3 * HOUR);
        assertThat(jobs.reworkSeconds(1)).isZero();
    }

    @Test
    void settlingWithinTheFreeWeeksIsPartOfThePriceAndAfterThemANewJob() {
        ShopBuilder shop = new ShopBuilder()
                .type(new RepairType(
                        "setup", "setup", "setup", HOUR, 1_000_000, Absent.AMOUNT, List.of(), Absent.AMOUNT, 8));
        shop.ticket("1").opened("2026-01-10").line("setup", 1).whole("ann", 1);
        shop.ticket("2")
                .opened("2026-03-01")
                .line("setup", 0)
                .putsRight("1", "1", ReturnReason.SETTLING)
                .whole("ann", 0.5);
        shop.ticket("3")
                .opened("2026-07-01")
                .line("setup", 1)
                .putsRight("1", "1", ReturnReason.SETTLING)
                .whole("ann", 1);
        JobLines jobs = split(shop);
        assertThat(jobs.settlingSeconds(0)).isEqualTo(1_800);
        assertThat(jobs.reworkSeconds(0)).isZero();
        assertThat(jobs.judged(1)).isFalse();
        assertThat(jobs.judged(2)).isTrue();
    }

    @Test
    void aVisitWithoutLinesThatPutsATicketRightIsCarriedToItsLines() {
        JobLines jobs = split(shop().ticket("1")
                .line("refret", 10)
                .logged("ann", "1", 10)
                .ticket("2")
                .opened("2026-03-01")
                .putsRight("1")
                .whole("ann", 1.5));
        assertThat(jobs.reworkSeconds(0)).isEqualTo(5_400);
        assertThat(placed(jobs, "on tickets without an accepted line")).isEqualTo(5_400);
    }

    @Test
    void aLineNobodyLoggedOnALoggedTicketCountsAsNoneAndTeachesNothing() {
        JobLines jobs =
                split(shop().ticket("1").line("refret", 10).line("setup", 1).logged("ann", "1", 10));
        assertThat(jobs.judged(1)).isTrue();
        assertThat(jobs.actualSeconds(1)).isZero();
        assertThat(jobs.evidence(1)).isEqualTo(SplitEvidence.NONE);
        assertThat(jobs.expectedHours(1)).isGreaterThan(0.5);
    }
}
