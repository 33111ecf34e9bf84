package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.costing.Restatement;
import benchtrue.settings.Settings;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CloseMonthTest {
    private static final int SEPTEMBER = 2026 * 12 + 8;
    private static final int AS_OF = (int) LocalDate.of(2026, 10, 31).toEpochDay();

    @TempDir
    Path shop;

    @BeforeEach
    void aShop() throws IOException {
        write(
                "price-book/2026-01-01.csv",
                "repair_type,title,family,book_hours,book_labour",
                "setup,Setup,setup,2,200");
        write(
                "exports/tickets.csv",
                "ticket,opened,closed,status,instrument_class",
                "T1,2026-09-01,2026-09-10,closed,archtop",
                "T2,2026-09-02,2026-09-11,closed,mandolin",
                "T3,2026-10-05,,open,mandolin");
        write(
                "exports/quoted-lines.csv",
                "ticket,line,repair_type,quoted_hours,quoted_labour",
                "T1,1,setup,2,200",
                "T2,1,setup,2,200");
        write(
                "exports/time-log-2026-09-30.csv",
                "entry,ticket,line,technician,work_date,hours",
                "E1,T1,1,ann,2026-09-03,3",
                "E2,T2,1,ann,2026-09-04,2");
        write("exports/technicians.csv", "technician,hourly_wage,effective_from", "ann,20,2026-01-01");
        write("exports/overheads.csv", "month,account,amount", "2026-09,rent,500");
    }

    private void write(String file, String... rows) throws IOException {
        Files.createDirectories(shop.resolve(file).getParent());
        Files.writeString(shop.resolve(file), String.join("\r\n", rows) + "\r\n");
    }

    private Path close() {
        return new CloseMonth().close(shop, Settings.DEFAULTS, AS_OF, SEPTEMBER);
    }

    private List<Restatement> restatements() {
        return new Night(List.of(), Progress.UNHEARD, Clock.systemUTC(), "test")
                .run(shop, Settings.DEFAULTS, AS_OF)
                .review()
                .restatements();
    }

    @Test
    void aClosedMonthThatNothingTouchedShowsNothing() {
        assertThat(close()).isEqualTo(shop.resolve("close/2026-09.csv"));
        assertThat(restatements()).isEmpty();
        assertThat(shop.resolve("out/2026-10-31/restatements.csv")).doesNotExist();
    }

    @Test
    void aLateCorrectionShowsWithItsCauseAndRewritesNothing() throws IOException {
        byte[] sealed = Files.readAllBytes(close());
        write(
                "exports/time-log-2026-10-05.csv",
                "entry,ticket,line,technician,work_date,hours",
                "E1,T1,1,ann,2026-09-03,4",
                "E3,,,ann,2026-09-05,1");
        assertThat(restatements())
                .contains(
                        new Restatement(
                                SEPTEMBER,
                                "earned actual_hours",
                                "5.0000",
                                "6.0000",
                                List.of("ticket T1 actual hours: 3.0000 sealed, 4.0000 now")),
                        new Restatement(
                                SEPTEMBER,
                                "earned labour_cost",
                                "130.0000",
                                "156.0000",
                                List.of("ticket T1 labour cost: 78.0000 sealed, 104.0000 now")),
                        new Restatement(
                                SEPTEMBER,
                                "worked logged_hours",
                                "5.0000",
                                "7.0000",
                                List.of(
                                        "(no ticket) logged hours: nothing sealed, 1.0000 now",
                                        "ticket T1 logged hours: 3.0000 sealed, 4.0000 now")));
        assertThat(Files.readAllBytes(shop.resolve("close/2026-09.csv"))).isEqualTo(sealed);
        assertThat(shop.resolve("out/2026-10-31/restatements.csv"))
                .content()
                .contains("2026-09,earned labour_cost,130.0000,156.0000,");
    }

    @Test
    void otherOverheadsAreTracedToTheirAccount() throws IOException {
        close();
        write("exports/overheads.csv", "month,account,amount", "2026-09,rent,500", "2026-09,power,60");
        assertThat(restatements())
                .contains(new Restatement(
                        SEPTEMBER,
                        "overhead amount",
                        "500.0000",
                        "560.0000",
                        List.of("account power amount: nothing sealed, 60.0000 now")))
                .anySatisfy(row -> {
                    assertThat(row.figure()).isEqualTo("earned overhead_cost");
                    assertThat(row.causes()).contains("overhead rate: 100.0000 sealed, 112.0000 now");
                });
    }

    @Test
    void theSealIsAnInputOfTheRun() throws IOException {
        close();
        restatements();
        assertThat(shop.resolve("out/2026-10-31/run.json")).content().contains("\"close/2026-09.csv\"");
    }

    @Test
    void aSealIsNeverRewritten() throws IOException {
        byte[] sealed = Files.readAllBytes(close());
        assertRefused(ExitCode.CANNOT_WRITE, "sealed already", this::close);
        assertThat(Files.readAllBytes(shop.resolve("close/2026-09.csv"))).isEqualTo(sealed);
    }

    @Test
    void aMonthThatIsNotOverIsNotSealed() {
        int early = (int) LocalDate.of(2026, 9, 29).toEpochDay();
        assertRefused(
                ExitCode.USAGE, "not over", () -> new CloseMonth().close(shop, Settings.DEFAULTS, early, SEPTEMBER));
        assertThat(shop.resolve("close")).doesNotExist();
    }

    private static void close(Path shop, int month) {
        new CloseMonth().close(shop, Settings.DEFAULTS, AS_OF, month);
    }

    @Test
    void aMonthThatTheRowsDoNotReachIsNotSealed() throws IOException {
        assertRefused(ExitCode.USAGE, "before the first row", () -> close(shop, SEPTEMBER - 1));
        assertRefused(ExitCode.USAGE, "before the first row", () -> close(shop, SEPTEMBER - 120));
        write(
                "exports/tickets.csv",
                "ticket,opened,closed,status,instrument_class",
                "T1,2026-09-01,2026-09-10,closed,archtop",
                "T2,2026-09-02,2026-09-29,closed,mandolin");
        assertRefused(ExitCode.USAGE, "has not ended at the newest row", this::close);
        assertRefused(ExitCode.USAGE, "29 Sep 2026", this::close);
        assertRefused(
                ExitCode.USAGE,
                "lies after the newest row",
                () -> new CloseMonth().close(shop, Settings.DEFAULTS, AS_OF + 60, SEPTEMBER + 1));
        assertThat(shop.resolve("close")).doesNotExist();
    }

    @Test
    void aMonthOfWhichMostOfTheLogIsMissingIsNotSealed() throws IOException {
        write("exports/paid-hours.csv", "technician,month,hours", "ann,2026-09,160");
        assertRefused(ExitCode.USAGE, "most of its log missing: only 3", this::close);
        write("exports/paid-hours.csv", "technician,month,hours", "ann,2026-09,8");
        assertThat(close()).exists();
    }

    @Test
    void aMonthInWhichNothingWasLoggedIsNotSealed() throws IOException {
        write(
                "exports/time-log-2026-09-30.csv",
                "entry,ticket,line,technician,work_date,hours",
                "E1,T1,1,ann,2026-10-03,3");
        assertRefused(ExitCode.USAGE, "nothing was logged in it", this::close);
    }

    /** Eleven two-hour jobs a month from May on, closed on the day they were logged. */
    private void fiveMonths(double hoursInSeptember) throws IOException {
        List<String> tickets = new ArrayList<>(List.of("ticket,opened,closed,status,instrument_class"));
        List<String> lines = new ArrayList<>(List.of("ticket,line,repair_type,quoted_hours,quoted_labour"));
        List<String> log = new ArrayList<>(List.of("entry,ticket,line,technician,work_date,hours"));
        for (int month = 5; month <= 10; month++) {
            for (int day = 10; day <= 20; day++) {
                String ticket = "M" + month + "-" + day;
                String date = String.format(java.util.Locale.ROOT, "2026-%02d-%02d", month, day);
                tickets.add(ticket + "," + date + "," + date + ",closed,archtop");
                lines.add(ticket + ",1,setup,2,200");
                log.add("E" + ticket + "," + ticket + ",1,ann," + date + "," + (month == 9 ? hoursInSeptember : 2));
            }
        }
        write("exports/tickets.csv", tickets.toArray(String[]::new));
        write("exports/quoted-lines.csv", lines.toArray(String[]::new));
        write("exports/time-log-2026-09-30.csv", log.toArray(String[]::new));
    }

    @Test
    void withoutPaidHoursTheHoursAJobOfOtherMonthsTellWhetherTheLogIsThere() throws IOException {
        fiveMonths(0.75);
        assertRefused(ExitCode.USAGE, "most of its log missing: 0.75", this::close);
        fiveMonths(1.25);
        assertThat(close()).exists();
    }

    @Test
    void anEditedSealStopsTheNightWithItsFileAndLine() throws IOException {
        Path file = close();
        Files.writeString(file, Files.readString(file).replace("130.0000", "120.0000"));
        assertRefused(ExitCode.UNUSABLE_FILE, "2026-09.csv, line ", this::restatements);
        Files.writeString(file, Files.readString(file).replaceAll("seal,.*\r\n", ""));
        assertRefused(ExitCode.UNUSABLE_FILE, "no seal", this::restatements);
    }

    @Test
    void anotherFileAmongTheSealsIsRefusedByName() throws IOException {
        write("close/notes.csv", "anything");
        assertRefused(ExitCode.UNUSABLE_FILE, "such as 2026-09.csv", this::restatements);
    }

    private static void assertRefused(ExitCode code, String words, Runnable work) {
        assertThatThrownBy(work::run)
                .asInstanceOf(InstanceOfAssertFactories.type(Refusal.class))
                .satisfies(refusal -> {
                    assertThat(refusal.exitCode()).isEqualTo(code);
                    assertThat(refusal).hasMessageContaining(words);
                });
    }
}
