package benchtrue.reconcile;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopFolder;
import benchtrue.shop.Absent;
import benchtrue.shop.Balance;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeKind;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReconcileTest {
    private static final String LOG = "entry,ticket,line,repair_type,technician,work_date,hours,start,end,kind";

    @TempDir
    Path folder;

    private ShopFolder shop() {
        return new ShopFolder(folder);
    }

    @Test
    void aTidyShopIsReadWhole() {
        Reconciled result = shop().reconciled();
        assertThat(result.ledger().tickets().size()).isEqualTo(1);
        assertThat(result.ledger().lines().size()).isEqualTo(2);
        assertThat(result.ledger().time().seconds(0)).isEqualTo(23_400);
        assertThat(result.ledger().missing())
                .containsExactlyInAnyOrder("technicians", "parts-usage", "paid-hours", "overheads", "waits");
        assertThat(result.setAside().tables()).isEmpty();
        assertThat(result.balances()).allMatch(Balance::holds);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "E1,T1,1,,Ada,2026-02-30,1,,,|work_date: found \"2026-02-30\", expected a date such as 2026-03-09",
                "E1,T1,1,,Ada,,1,,,|work_date: empty, expected a date such as 2026-03-09",
                "E1,T1,1,,Ada,2026-03-03,abc,,,|hours: found \"abc\", expected hours such as 1.5 or 1:30",
                "E1,T1,1,,Ada,2026-03-03,,,,|hours: empty, expected hours, or start and end",
                "E1,T1,1,,Ada,2026-03-03,,9:00,,|end: empty, expected both start and end, or hours",
                "E1,T1,1,,Ada,2026-03-03,,9:00,8:30,|end: found \"8:30\", expected a time after the start, or at most 12 hours after it over midnight",
                "E1,T1,1,,Ada,2026-03-03,25,,,|hours: found \"25\", expected at most 24 hours in one entry",
                "E1,T1,1,,Ada,2026-03-03,-2,,,|hours: found \"-2\", expected hours above zero, or an entry of the same technician and ticket that this one takes back",
                "E1,t-01,1,,Ada,2026-03-03,1,,,|ticket: found \"t-01\", expected a ticket of the table tickets (the nearest there is \"T1\")",
                "E1,X9,1,,Ada,2026-03-03,1,,,|ticket: found \"X9\", expected a ticket of the table tickets",
                "E1,T1,,refrett,Ada,2026-03-03,1,,,|repair_type: found \"refrett\", expected a repair type of the price book (the nearest there is \"refret\")",
                "E1,T1,1,,,2026-03-03,1,,,|technician: empty, expected text",
                "E1,T1,1,,Ada,2026-03-03,1,,|row: found 9 cells, expected 10 as in the header, so that no cell can be trusted; look for a missing or an unquoted comma",
                "E1,T1,1,,Ada,2026-03-03,1,,,paint|kind: found \"paint\", expected one of bench, handling, quoting, shop",
            })
    void anEntryThatCantBeUsedIsSetAsideWithItsReason(String row, String reason) {
        Reconciled result = shop().file("exports/time-log.csv", LOG, row + "").reconciled();
        assertThat(ShopFolder.setAside(result)).singleElement().satisfies(aside -> {
            assertThat(aside.reasons()).containsExactly(reason);
            assertThat(aside.file()).isEqualTo("exports/time-log.csv");
            assertThat(aside.line()).isEqualTo(2);
        });
        assertThat(result.ledger().time().size()).isZero();
    }

    @Test
    void aRowWithSeveralFaultsNamesThemAll() {
        Reconciled result = shop().file("exports/time-log.csv", LOG, "E1,X9,1,nothing,Ada,33.3.2026,25,,,")
                .reconciled();
        assertThat(ShopFolder.setAside(result).get(0).reasons()).hasSize(4);
    }

    @Test
    void overlappingExportsCountAnEntryOnce() {
        Reconciled result = shop().file(
                        "exports/time-log-2026-04.csv",
                        LOG,
                        "E1,T1,1,,Ada,2026-03-03,6:30,,,",
                        "E2,T1,1,,Ada,2026-03-04,2,,,")
                .reconciled();
        assertThat(result.ledger().time().size()).isEqualTo(2);
    }

    @Test
    void theNewerExportWinsAndTheChangeIsListed() {
        Reconciled result = shop().file("exports/time-log-2026-04.csv", LOG, "E1,T1,1,,Ada,2026-03-03,7,,,")
                .reconciled();
        assertThat(result.ledger().time().seconds(0)).isEqualTo(7 * 3600);
        assertThat(ShopFolder.notice(result, "key-changed").orElseThrow().examples())
                .containsExactly("exports/time-log-2026-04.csv line 2: replaces exports/time-log.csv line 2");
    }

    @Test
    void anHonestDoubleEntryInOneFileSurvivesAndAnOverlappingExportDoesNotDoubleIt() {
        String header = "ticket,technician,work_date,hours";
        String row = "T1,Ada,2026-03-03,1";
        Reconciled result = shop().file("exports/time-log.csv", header, row, row)
                .file("exports/time-log-2026-04.csv", header, row, row, row)
                .reconciled();
        assertThat(result.ledger().time().size()).isEqualTo(3);
    }

    @Test
    void aQuoteRetypedAtPickUpDoesNotHealAnUnderQuote() {
        Reconciled result = shop().file(
                        "exports/quoted-lines-2026-04.csv",
                        "ticket,line,repair_type,quoted_hours,quoted_labour",
                        "T1,1,refret,18,1800.00")
                .reconciled();
        assertThat(result.ledger().lines().quotedSeconds(0)).isEqualTo(18 * 3600);
        assertThat(result.ledger().lines().judgedSeconds(0)).isEqualTo(12 * 3600);
    }

    @Test
    void aSpraySessionOverSeveralTicketsIsOneSharedEntry() {
        Reconciled result = shop().file(
                        "exports/tickets.csv",
                        "ticket,opened,instrument_class",
                        "T1,2026-03-02,flat-top",
                        "T2,2026-03-02,mandolin")
                .file("exports/time-log.csv", LOG, "E1,T1; T2,,,Ada,2026-03-03,3,,,")
                .reconciled();
        assertThat(result.ledger().time().ticket(0)).isEqualTo(TimeEntries.SHARED);
        assertThat(result.ledger().time().sharedTickets(0)).containsExactly(0, 1);
    }

    @Test
    void aTicketWithoutHoursBesideOneWithTwiceAsManyIsListed() {
        ShopFolder shop = shop().file(
                        "exports/tickets.csv",
                        "ticket,opened,closed,status,instrument_class",
                        "T1,2026-03-02,2026-03-09,closed,flat-top",
                        "T2,2026-03-02,2026-03-09,closed,mandolin")
                .file(
                        "exports/quoted-lines.csv",
                        "ticket,line,repair_type,quoted_hours,quoted_labour",
                        "T1,1,refret,12,1200.00",
                        "T2,1,refret,10,1000.00");
        String listed = "perhaps logged to each other";
        assertThat(shop.file("exports/time-log.csv", LOG, "E1,T1,,,Ada,2026-03-03,24,,,")
                        .reconciled()
                        .notices()
                        .toString())
                .contains(listed);
        assertThat(shop.file(
                                "exports/time-log.csv",
                                LOG,
                                "E1,T1,,,Ada,2026-03-03,13,,,",
                                "E2,T2,,,Ada,2026-03-03,10,,,")
                        .reconciled()
                        .notices()
                        .toString())
                .doesNotContain(listed);
    }

    @Test
    void overlappingClockTimesOfOneTechnicianShareTheOverlap() {
        Reconciled result = shop().file(
                        "exports/time-log.csv",
                        LOG,
                        "E1,T1,1,,Ada,2026-03-03,,9:00,11:00,",
                        "E2,T1,2,,Ada,2026-03-03,,10:00,12:00,",
                        "E3,T1,2,,Bo,2026-03-03,,10:00,12:00,")
                .reconciled();
        TimeEntries time = result.ledger().time();
        assertThat(time.seconds(0)).isEqualTo(5_400);
        assertThat(time.seconds(1)).isEqualTo(5_400);
        assertThat(time.seconds(2)).isEqualTo(7_200);
        assertThat(ShopFolder.notice(result, "clock-times-overlap")
                        .orElseThrow()
                        .count())
                .isEqualTo(2);
    }

    @Test
    void workOverMidnightRunsIntoTheNextDay() {
        Reconciled result = shop().file("exports/time-log.csv", LOG, "E1,T1,1,,Ada,2026-03-03,,22:30,1:00,")
                .reconciled();
        assertThat(result.ledger().time().seconds(0)).isEqualTo(9_000);
    }

    @Test
    void aNegativeEntryTakesBackTheOneItCancels() {
        Reconciled result = shop().file(
                        "exports/time-log.csv",
                        LOG,
                        "E1,T1,1,,Ada,2026-03-03,2,,,",
                        "E2,T1,1,,Ada,2026-03-04,-2,,,",
                        "E3,T1,1,,Ada,2026-03-05,2,,,",
                        "E4,T1,1,,Bo,2026-03-05,-2,,,")
                .reconciled();
        assertThat(result.ledger().time().size()).isEqualTo(1);
        assertThat(ShopFolder.setAside(result))
                .singleElement()
                .satisfies(row -> assertThat(row.line()).isEqualTo(5));
    }

    @Test
    void timeOnALineThatTheTicketLacksCountsForTheTicket() {
        Reconciled result = shop().file("exports/time-log.csv", LOG, "E1,T1,9,,Ada,2026-03-03,2,,,")
                .reconciled();
        assertThat(result.ledger().time().line(0)).isEqualTo(Absent.INDEX);
        assertThat(ShopFolder.notice(result, "unknown-line")).isPresent();
    }

    @Test
    void timeWithoutATicketIsShopTimeUnlessItSaysOtherwise() {
        Reconciled result = shop().file(
                        "exports/time-log.csv",
                        LOG,
                        "E1,,,,Ada,2026-03-03,2,,,",
                        "E2,,,,Ada,2026-03-04,2,,,quoting",
                        "E3,T1,,,Ada,2026-03-05,2,,,")
                .reconciled();
        TimeEntries time = result.ledger().time();
        assertThat(time.kind(0)).isEqualTo(TimeKind.SHOP);
        assertThat(time.kind(1)).isEqualTo(TimeKind.QUOTING);
        assertThat(time.kind(2)).isEqualTo(TimeKind.BENCH);
    }

    @Test
    void whatLiesAfterTheAsOfDateEntersNoFigure() {
        Reconciled result = shop().file(
                        "exports/time-log.csv", LOG, "E1,T1,1,,Ada,2026-11-02,2,,,", "E2,T1,1,,Ada,2026-11-01,1,,,")
                .reconciled();
        assertThat(result.ledger().time().size()).isEqualTo(1);
        assertThat(ShopFolder.notice(result, "after-as-of").orElseThrow().count())
                .isEqualTo(1);
    }

    @Test
    void aTicketOpenedAfterTheAsOfDateTakesItsRowsAlong() {
        Reconciled result = shop().file(
                        "exports/tickets-2026-11.csv", "ticket,opened,instrument_class", "T2,2026-11-05,flat-top")
                .file("exports/quoted-lines-2026-11.csv", "ticket,line,repair_type,quoted_hours", "T2,1,setup,2")
                .reconciled();
        assertThat(result.ledger().tickets().size()).isEqualTo(1);
        assertThat(result.ledger().lines().size()).isEqualTo(2);
        assertThat(result.setAside().tables()).isEmpty();
    }

    @Test
    void hoursFinerThanASecondAreRoundedAndTheRoundingStandsInTheBalance() {
        Reconciled result = shop().file(
                        "exports/time-log.csv",
                        LOG,
                        "E1,T1,1,,Ada,2026-03-03,0.3333,,,",
                        "E2,T1,1,,Ada,2026-03-04,0.3333,,,",
                        "E3,T1,1,,Ada,2026-03-05,0.3333,,,")
                .reconciled();
        Balance hours = result.balances().stream()
                .filter(balance -> balance.name().equals("hours"))
                .findFirst()
                .orElseThrow();
        // 0.3333 h = 1,199.88 s; three of them 3,599.64 s, three rounded entries 3,600 s.
        assertThat(hours.read()).isEqualTo(3_600);
        assertThat(hours.holds()).isTrue();
    }

    @Test
    void aRowThatComesBackCorrectedSupersedesTheRowItCameFrom() {
        ShopFolder shop = shop().file("exports/time-log.csv", LOG, "E1,T1,1,,Ada,2026-03-03,two,,,");
        SetAsideRow aside = ShopFolder.setAside(shop.reconciled()).get(0);
        Reconciled result = shop.file(
                        "exports/time-log-corrected.csv",
                        "source_file,source_line,source_digest,reasons," + LOG,
                        aside.file() + "," + aside.line() + "," + aside.digest() + ",,E1,T1,1,,Ada,2026-03-03,2,,,")
                .reconciled();
        assertThat(result.setAside().tables()).isEmpty();
        assertThat(result.ledger().time().seconds(0)).isEqualTo(7_200);
    }
}
