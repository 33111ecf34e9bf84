package benchtrue.reconcile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchtrue.ShopFolder;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NotReadTest {
    private static final String LOG = "entry,ticket,line,technician,work_date,hours";

    @TempDir
    Path folder;

    private ShopFolder shop;

    @BeforeEach
    void aShopWithARefretAndASetup() {
        shop = new ShopFolder(folder);
    }

    private static String[] rows(String header, int count, IntFunction<String> row) {
        List<String> rows = new ArrayList<>(List.of(header));
        for (int i = 0; i < count; i++) {
            rows.add(row.apply(i));
        }
        return rows.toArray(String[]::new);
    }

    private void refused(ExitCode code, String... words) {
        assertThatThrownBy(shop::reconciled)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.exitCode()).isEqualTo(code))
                .hasMessageContainingAll(words);
    }

    @Test
    void aLogOfWhichEveryRowHasTwoCellsTooManyIsAFileThatCantBeUsed() {
        shop.file("exports/time-log.csv", rows(LOG, 20, i -> "E" + i + ",T1,1,Ada,2026-03-03,1,,"));
        refused(
                ExitCode.UNUSABLE_FILE,
                "exports/time-log.csv: found that 20 of 20 rows of time-log can't be used, all for the same reason",
                "line 2: row: found 8 cells, expected 6");
    }

    @Test
    void aLogOfWhichNearlyAllEntriesAreAboveADayIsAFileThatCantBeUsed() {
        shop.file("exports/time-log.csv", rows(LOG, 20, i -> "E" + i + ",T1,1,Ada,2026-03-03," + (i == 0 ? 2 : 30)));
        refused(ExitCode.UNUSABLE_FILE, "19 of 20 rows of time-log", "at most 24 hours in one entry");
    }

    @Test
    void aFewBadRowsOfDifferentKindsAreSetAsideAsBefore() {
        shop.file(
                "exports/time-log.csv",
                LOG,
                "E1,T1,1,Ada,2026-03-03,2",
                "E2,T1,1,Ada,soon,2",
                "E3,T9,1,Ada,2026-03-03,2",
                "E4,T1,1,Ada,2026-03-03,40");
        assertThat(ShopFolder.setAside(shop.reconciled())).hasSize(3);
    }

    @Test
    void unreadHoursAreToldByMonthTechnicianAndRepair() {
        shop.file(
                "exports/time-log.csv",
                LOG,
                "E1,T1,1,Ada,2026-03-03,4",
                "E2,T1,1,Ada,2026-03-04,30",
                "E3,T1,,Bo,2026-04-04,lots",
                "E4,T1,2,Bo,2026-04-05,4");
        Completeness read = shop.reconciled().ledger().completeness();
        int refret = shop.reconciled().ledger().repairTypes().code("refret");
        int setup = shop.reconciled().ledger().repairTypes().code("setup");
        assertThat(read.readSeconds()).isEqualTo(8 * 3_600);
        assertThat(read.unreadSeconds()).isEqualTo(34 * 3_600);
        assertThat(read.tooLittle()).isTrue();
        assertThat(read.reason()).contains("at most 24 hours in one entry");
        assertThat(read.months().values()).extracting(Completeness.Part::unread).containsExactly(108_000.0, 14_400.0);
        assertThat(read.technicians().get("Bo").unread()).isEqualTo(14_400);
        assertThat(read.missing()[refret] / 3_600).isCloseTo(30 + 4 * 12 / 13.5, within(1e-9));
        assertThat(read.missing()[setup] / 3_600).isCloseTo(4 * 1.5 / 13.5, within(1e-9));
    }

    @Test
    void hoursOfATicketOfWhichAQuotedLineWasNotReadMayBeThatLines() {
        shop.file(
                        "exports/quoted-lines.csv",
                        "ticket,line,repair_type,quoted_hours,quoted_labour",
                        "T1,1,refret,12,1200",
                        "T1,2,setup,one and a half,150")
                .file("exports/time-log.csv", LOG, "E1,T1,,Ada,2026-03-03,9");
        Completeness read = shop.reconciled().ledger().completeness();
        assertThat(read.foreign()[shop.reconciled().ledger().repairTypes().code("refret")])
                .isEqualTo(9 * 3_600);
    }

    @Test
    void aFewEqualRowsInFilesOfTheSameDaysAreListedAndWeighedButBothCount() {
        shop.file("exports/time-log.csv", rows(LOG, 20, i -> "E" + i + ",T1,1,Ada,2026-03-03,0." + (70 + i)))
                .file(
                        "exports/time-log-2026-04-01.csv",
                        rows(LOG, 20, i -> "F" + i + ",T1,1,Ada,2026-03-03,0." + (i == 0 ? 70 : 40 + i)));
        Reconciled both = shop.reconciled();
        assertThat(both.ledger().time().size()).isEqualTo(40);
        assertThat(both.notices().get(0).code()).isEqualTo("perhaps-twice");
        assertThat(both.ledger()
                        .completeness()
                        .foreign()[both.ledger().repairTypes().code("refret")])
                .isEqualTo(2520);
    }

    @Test
    void equalClockTimesOfOneTechnicianInTwoFilesAreOneStretch() {
        String clocked = "entry,ticket,line,technician,work_date,start,end";
        shop.file(
                        "exports/time-log.csv",
                        clocked,
                        "E1,T1,1,Ada,2026-03-03,9:00,11:00",
                        "E2,T1,1,Ada,2026-03-05,9:00,10:00")
                .file(
                        "exports/time-log-2026-04-01.csv",
                        clocked,
                        "F1,T1,1,Ada,2026-03-03,9:00,11:00",
                        "F2,T1,2,Ada,2026-03-04,9:00,10:00",
                        "F3,T1,2,Ada,2026-03-04,11:00,12:00");
        assertThat(shop.reconciled().ledger().time().size()).isEqualTo(4);
    }

    @Test
    void twoEntriesOfOneLengthOnOneTicketAndDayInOneFileStayTwo() {
        shop.file("exports/time-log.csv", LOG, "E1,T1,1,Ada,2026-03-03,1", "E2,T1,1,Ada,2026-03-03,1");
        assertThat(shop.reconciled().ledger().time().size()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({"2026-01-01.CSV", "2026-01-01.txt"})
    void twoPriceBooksForOneDayAreRefusedByName(String second) {
        shop.file(
                "price-book/" + second,
                "repair_type,title,family,book_hours,book_labour",
                "refret,Refret,fretwork,13,1300");
        refused(ExitCode.UNUSABLE_FILE, "price-book/2026-01-01.csv", second, "two price books for 2026-01-01");
    }

    @Test
    void aRuleWithoutAFileBesideAFileThatNobodyReadsIsRefused() {
        shop.file("exports/hours october.csv", LOG)
                .file("shop.toml", "[[files]]", "name = \"hours-october.csv\"", "table = \"time-log\"");
        refused(ExitCode.SETTINGS, "shop.toml, line 1", "hours-october.csv", "exports/hours october.csv");
    }

    @Test
    void ticketsThatNameEachOtherAsTheEarlierOneAreTold() {
        shop.file(
                "exports/tickets.csv",
                "ticket,opened,closed,status,instrument_class,rework_of",
                "T1,2026-03-02,2026-03-20,closed,flat-top,T2",
                "T2,2026-03-02,2026-03-20,closed,flat-top,T1",
                "T3,2026-03-02,2026-03-20,closed,flat-top,T3");
        Reconciled told = shop.reconciled();
        assertThat(ShopFolder.notice(told, "circular-rework"))
                .hasValueSatisfying(notice -> assertThat(notice.count()).isEqualTo(2));
        assertThat(told.ledger().tickets().reworkOf(2)).isNegative();
    }

    @Test
    void statedHoursWhoseEndLiesBeforeTheirStartAreTold() {
        shop.file(
                "exports/time-log.csv",
                "entry,ticket,line,technician,work_date,hours,start,end",
                "E1,T1,1,Ada,2026-03-03,2,15:00,13:30");
        assertThat(ShopFolder.notice(shop.reconciled(), "end-before-start")).isPresent();
    }
}
