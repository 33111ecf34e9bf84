package benchtrue.reconcile;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopFolder;
import benchtrue.shop.Notice;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A key that one technician had until leaving and another got: whose hours and wage these are is told, not taken for sure. */
class KeyUsedAgainTest {
    @TempDir
    Path folder;

    private ShopFolder shop;

    @BeforeEach
    void aTechnicianWhoWorkedUntilMarch() {
        shop = new ShopFolder(folder)
                .file(
                        "exports/tickets.csv",
                        "ticket,opened,closed,status,instrument_class",
                        "T1,2025-03-02,,open,flat-top");
    }

    private void wages(String... rows) {
        List<String> all = new ArrayList<>(List.of("technician,hourly_wage,effective_from", "T3,40,2024-01-01"));
        all.addAll(Arrays.asList(rows));
        shop.file("exports/technicians.csv", all.toArray(String[]::new));
    }

    private void worked(String... days) {
        List<String> all = new ArrayList<>(List.of("entry,ticket,line,technician,work_date,hours"));
        for (String day : days) {
            all.add("E" + day + ",T1,1,T3," + day + ",2");
        }
        shop.file("exports/time-log.csv", all.toArray(String[]::new));
    }

    private Optional<Notice> told() {
        return ShopFolder.notice(shop.reconciled(), "key-used-again");
    }

    @Test
    void anotherWageAfterHalfAYearWithoutTimeIsPerhapsSomebodyElses() {
        wages("T3,15,2026-01-05");
        worked("2025-03-10", "2026-01-05", "2026-01-06", "2026-02-06");
        assertThat(told()).hasValueSatisfying(notice -> {
            assertThat(notice.count()).isEqualTo(1);
            assertThat(notice.examples()).singleElement().asString().contains("line 3");
        });
    }

    @Test
    void hoursBeforeTheNewWageBeginsStandAtTheOldOneAndAreAllListed() {
        wages("T3,15,2026-02-01");
        worked("2025-03-10", "2026-01-05", "2026-01-06", "2026-02-06");
        assertThat(told())
                .hasValueSatisfying(notice -> assertThat(notice.count()).isEqualTo(2));
    }

    @Test
    void aLowerWageAfterAMonthWithoutTimeIsPerhapsAnApprentices() {
        wages("T3,15,2025-05-19");
        worked("2025-03-10", "2025-05-12", "2025-05-13", "2025-05-20");
        assertThat(told())
                .hasValueSatisfying(notice -> assertThat(notice.count()).isEqualTo(2));
        worked("2025-04-21", "2025-05-12", "2025-05-20");
        assertThat(told()).as("three weeks away").isEmpty();
        wages("T3,45,2025-05-19");
        worked("2025-03-10", "2025-05-12", "2025-05-20");
        assertThat(told()).as("a raise").isEmpty();
    }

    @Test
    void aRaiseOrALeaveAloneIsNot() {
        wages("T3,45,2025-06-01");
        worked("2025-03-10", "2025-05-30", "2025-07-01");
        assertThat(told()).isEmpty();
        wages();
        worked("2025-03-10", "2026-01-05");
        assertThat(told()).isEmpty();
        wages("T3,45,2026-09-01");
        assertThat(told()).isEmpty();
    }
}
