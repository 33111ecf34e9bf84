package benchtrue.reconcile;

import static benchtrue.ShopFolder.notice;
import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopFolder;
import benchtrue.intake.columns.Table;
import benchtrue.mapping.Draft;
import benchtrue.mapping.DraftMapping;
import benchtrue.settings.ReadSettings;
import benchtrue.shop.Balance;
import benchtrue.shop.TimeEntries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A time log of which each row is a week's work of one technician on one ticket. */
class WeekSumsTest {
    @TempDir
    Path folder;

    private ShopFolder shop(String... rows) {
        String[] lines = new String[rows.length + 1];
        lines[0] = "Job,Worker,Week,Hours";
        System.arraycopy(rows, 0, lines, 1, rows.length);
        return new ShopFolder(folder).without("exports/time-log.csv").file("exports/weeks.csv", lines);
    }

    private ShopFolder sums(String span, String... rows) {
        return shop(rows)
                .file(
                        "shop.toml",
                        "[[files]]",
                        "name = \"weeks.csv\"",
                        "table = \"time-log\"",
                        "[files.entries]",
                        "span = \"" + span + "\"",
                        "[files.columns]",
                        "ticket = \"Job\"",
                        "technician = \"Worker\"",
                        "work_date = \"Week\"",
                        "hours = \"Hours\"");
    }

    @ParameterizedTest
    @CsvSource({
        "week, 2026-03-04, 31.5, 5, 2026-03-02",
        "week, 2026-03-08, 40, 5, 2026-03-02",
        "week, 2026-03-02, 130, 7, 2026-03-02",
        "month, 2026-03-31, 150, 22, 2026-03-02",
        "day, 2026-03-04, 8, 1, 2026-03-04"
    })
    void aSumIsSpreadOverTheWorkingDaysThatItStandsFor(String span, String day, String hours, int days, String first) {
        Reconciled result = sums(span, "T1,Ada," + day + "," + hours).reconciled();
        TimeEntries time = result.ledger().time();
        assertThat(time.size()).isEqualTo(days);
        assertThat(LocalDate.ofEpochDay(time.workDay(0))).isEqualTo(first);
        long sum = 0;
        for (int entry = 0; entry < time.size(); entry++) {
            sum += time.seconds(entry);
            assertThat(days == 7
                            || LocalDate.ofEpochDay(time.workDay(entry))
                                            .getDayOfWeek()
                                            .compareTo(DayOfWeek.FRIDAY)
                                    <= 0)
                    .isTrue();
        }
        assertThat(sum).isEqualTo((long) (Double.parseDouble(hours) * 3_600));
        assertThat(result.balances()).allMatch(Balance::holds);
        assertThat(notice(result, "entries-are-sums").isPresent()).isEqualTo(days > 1);
    }

    @Test
    void whatNoWeekHoldsIsSetAside() {
        assertThat(sums("week", "T1,Ada,2026-03-04,169").reconciled().setAside().count(Table.TIME_LOG))
                .isEqualTo(1);
    }

    @Test
    void aDraftTellsSumsFromTheWholeFileAndAsksOnce() throws IOException {
        ShopFolder shop = shop(
                "T1,Ada,2026-03-02,31.5", "T1,Ada,2026-03-09,26.25", "T1,Ada,2026-03-16,38", "T1,Bo,2026-03-02,12.5");
        Draft draft = new DraftMapping().draft(folder, new ReadSettings().read(folder), "");
        assertThat(draft.questions())
                .containsExactly(
                        "exports/weeks.csv: 3 of 4 entries have more than 24 hours, at most 38: is an entry the sum of a week?");
        assertThat(draft.text()).contains("[files.entries]\nspan = \"week\"  # 80 %");
        Files.writeString(folder.resolve(ReadSettings.FILE), draft.text());
        assertThat(shop.reconciled().setAside().tables()).isEmpty();
    }

    @Test
    void oneLongEntryAmongManyIsNoSum() {
        String[] rows = new String[40];
        Arrays.fill(rows, "T1,Ada,2026-03-02,2.5");
        rows[3] = "T1,Ada,2026-03-02,35";
        shop(rows);
        assertThat(new DraftMapping()
                        .draft(folder, new ReadSettings().read(folder), "")
                        .text())
                .doesNotContain("[files.entries]");
    }
}
