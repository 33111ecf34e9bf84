package benchtrue.reconcile;

import static benchtrue.ShopFolder.notice;
import static benchtrue.ShopFolder.setAside;
import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopFolder;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dublin's clocks went forward on 2026-03-29 at 1:00 and back on 2026-10-25 at 2:00 (IANA time zone database). */
class ClockChangesTest {
    @TempDir
    Path folder;

    private Reconciled shop(String... rows) {
        String[] lines = new String[rows.length + 1];
        lines[0] = "technician,work_date,start,end";
        System.arraycopy(rows, 0, lines, 1, rows.length);
        return new ShopFolder(folder)
                .file("shop.toml", "zone = \"Europe/Dublin\"")
                .file("exports/time-log.csv", lines)
                .reconciled();
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-28, 22:00, 03:00, 14400",
        "2026-03-29, 00:30, 02:30, 3600",
        "2026-03-29, 09:00, 11:00, 7200",
        "2026-10-24, 22:00, 03:00, 21600",
        "2026-10-25, 00:30, 02:30, 10800",
        "2026-10-25, 00:30, 01:30, 3600",
        "2026-10-25, 03:00, 24:00, 75600",
        "2026-10-26, 00:30, 02:30, 7200",
    })
    void theHoursThatPassedCountWhenTheClocksWereChanged(String day, String start, String end, long seconds) {
        Reconciled result = shop("Ada," + day + "," + start + "," + end);
        assertThat(setAside(result)).isEmpty();
        assertThat(result.ledger().time().seconds(0)).isEqualTo(seconds);
    }

    @Test
    void aStretchOverAChangeOfTheClocksIsListed() {
        Reconciled result = shop("Ada,2026-03-28,22:00,03:00", "Ada,2026-03-30,22:00,03:00");
        assertThat(notice(result, "clocks-changed").orElseThrow().examples())
                .containsExactly("exports/time-log.csv line 2");
    }

    @Test
    void aClockThatNobodyChangedNeverRunsBackwards() {
        Reconciled result = shop("Ada,2026-03-29,01:45,02:00");
        assertThat(result.ledger().time().seconds(0)).isEqualTo(900);
    }

    @Test
    void stretchesThatMeetOverAChangeOfTheClocksDoNotOverlap() {
        Reconciled result = shop("Ada,2026-10-24,23:00,02:30", "Ada,2026-10-25,02:30,04:00");
        assertThat(notice(result, "clock-times-overlap")).isEmpty();
        assertThat(result.ledger().time().seconds(0)).isEqualTo(4 * 3_600 + 1_800);
        assertThat(result.ledger().time().seconds(1)).isEqualTo(5_400);
    }
}
