package benchtrue.truth;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.intake.ReadExports;
import benchtrue.reconcile.Reconcile;
import benchtrue.reconcile.Reconciled;
import benchtrue.sample.SampleOptions;
import benchtrue.sample.Tidiness;
import benchtrue.sample.WriteSample;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.Notice;
import benchtrue.shop.TimeEntries;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A log that was exported twice, in whatever way, counts once. */
class TwiceExportedTest {
    private static final int AS_OF = (int) LocalDate.of(2026, 10, 31).toEpochDay();

    @TempDir
    Path folder;

    private enum Again {
        UNDER_NEW_IDS(rows -> rows.replaceAll("(?m)^E", "X")),
        WITHOUT_IDS(rows -> rows.replaceAll("(?m)^[^,]*", "").replaceFirst("^", "entry")),
        UNDER_ANOTHER_FILE_NAME(rows -> rows),
        OVERLAPPING_BY_MONTHS(rows -> head(rows)
                + body(rows).stream()
                        .filter(row -> row.split(",", -1)[5].compareTo("2025-06") >= 0)
                        .map(row -> "X" + row + "\r\n")
                        .collect(Collectors.joining())),
        IN_ANOTHER_ORDER(rows -> {
            List<String> shuffled = new ArrayList<>(body(rows));
            Collections.shuffle(shuffled, new Random(5));
            return head(rows) + shuffled.stream().map(row -> "X" + row + "\r\n").collect(Collectors.joining());
        }),
        IN_ANOTHER_DIALECT(rows -> rows.replaceAll("(?m)^E", "X")
                .replaceAll("(\\d{4})-(\\d\\d)-(\\d\\d)", "$3.$2.$1")
                .replace('.', '\u0001')
                .replaceAll("(?<=,\\d{1,2})\u0001(?=\\d{1,2},)", "\u0002")
                .replace('\u0001', '.')
                .replace(',', ';')
                .replace('\u0002', ','));

        private final UnaryOperator<String> written;

        Again(UnaryOperator<String> written) {
            this.written = written;
        }

        private static String head(String rows) {
            return rows.substring(0, rows.indexOf('\n') + 1);
        }

        private static List<String> body(String rows) {
            return rows.lines().skip(1).toList();
        }
    }

    @ParameterizedTest
    @EnumSource
    void aLogExportedTwiceGivesTheHoursOfOneExport(Again again) throws IOException {
        Path shop = folder.resolve("shop");
        WriteSample.write(
                SampleOptions.standard(shop).withSeed(61).withTickets(400).with(Tidiness.TIDY));
        long once = seconds(reconciled(shop));
        String log = Files.readString(shop.resolve("exports/time-log.csv"), StandardCharsets.UTF_8);
        Files.writeString(shop.resolve("exports/time-log-2026-10-31.csv"), again.written.apply(log));
        Reconciled twice = reconciled(shop);
        assertThat(seconds(twice)).isEqualTo(once);
        if (again != Again.UNDER_ANOTHER_FILE_NAME) {
            assertThat(twice.notices()).anySatisfy(notice -> {
                assertThat(notice.code()).isEqualTo("same-work-twice");
                assertThat(notice.examples().get(0))
                        .contains("exports/time-log-2026-10-31.csv", "exports/time-log.csv");
            });
            assertThat(twice.notices().get(0)).extracting(Notice::code).isEqualTo("same-work-twice");
        }
    }

    private static Reconciled reconciled(Path shop) {
        Settings settings = new ReadSettings().read(shop);
        return new Reconcile().reconcile(new ReadExports().read(shop, settings), settings, AS_OF);
    }

    private static long seconds(Reconciled reconciled) {
        TimeEntries time = reconciled.ledger().time();
        long seconds = 0;
        for (int entry = 0; entry < time.size(); entry++) {
            seconds += time.seconds(entry);
        }
        return seconds;
    }
}
