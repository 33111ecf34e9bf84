package benchtrue.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.nightly.CloseMonth;
import benchtrue.nightly.Night;
import benchtrue.nightly.Progress;
import benchtrue.settings.Settings;
import benchtrue.workbook.review.MoneySheet;
import benchtrue.workbook.review.WriteWorkbook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A correction that reaches the shop after a month was sealed shows on the sheet of money, beside what was sealed. */
class RestatedMonthsTest {
    private static final String TITLE = "Sealed months that the records now tell otherwise";
    private static final int SEPTEMBER = 2026 * 12 + 8;
    private static final int AS_OF = (int) LocalDate.of(2026, 10, 31).toEpochDay();

    @TempDir
    Path shop;

    @BeforeEach
    void aShopWithASealedSeptember() throws IOException {
        write(
                "price-book/2026-01-01.csv",
                "repair_type,title,family,book_hours,book_labour",
                "setup,Setup,setup,2,200");
        write(
                "exports/tickets.csv",
                "ticket,opened,closed,status,instrument_class",
                "T1,2026-09-01,2026-09-10,closed,archtop",
                "T2,2026-10-05,,open,mandolin");
        write("exports/quoted-lines.csv", "ticket,line,repair_type,quoted_hours,quoted_labour", "T1,1,setup,2,200");
        write(
                "exports/time-log-2026-09-30.csv",
                "entry,ticket,line,technician,work_date,hours",
                "E1,T1,1,ann,2026-09-03,3");
        write("exports/technicians.csv", "technician,hourly_wage,effective_from", "ann,20,2026-01-01");
        new CloseMonth().close(shop, Settings.DEFAULTS, AS_OF, SEPTEMBER);
    }

    private void write(String file, String... rows) throws IOException {
        Files.createDirectories(shop.resolve(file).getParent());
        Files.writeString(shop.resolve(file), String.join("\r\n", rows) + "\r\n");
    }

    /** Returns the rows of the table, as text; none where there is no such table. */
    private List<String> table() throws IOException {
        Path results = new Night(List.of(new WriteWorkbook()), Progress.UNHEARD, Clock.systemUTC(), "test")
                .run(shop, Settings.DEFAULTS, AS_OF)
                .folder();
        List<String> rows = new ArrayList<>();
        boolean within = false;
        try (XSSFWorkbook workbook = Formulas.open(results.resolve(WriteWorkbook.FILE))) {
            for (Row row : workbook.getSheet(MoneySheet.NAME)) {
                List<String> cells = new ArrayList<>();
                row.forEach(cell -> cells.add(cell.toString()));
                if (within) {
                    rows.add(String.join("|", cells));
                }
                within |= cells.contains(TITLE);
            }
        }
        return rows;
    }

    @Test
    void aMonthThatNothingTouchedHasNoSuchTable() throws IOException {
        assertThat(table()).isEmpty();
    }

    @Test
    void aLateCorrectionStandsBesideWhatWasSealedWithItsCause() throws IOException {
        write(
                "exports/time-log-2026-10-05.csv",
                "entry,ticket,line,technician,work_date,hours",
                "E1,T1,1,ann,2026-09-03,4");
        assertThat(table())
                .contains("Figure|Month|Sealed|Now|Why")
                .anyMatch(row -> row.startsWith(
                        "earned actual hours|2026-09|3.0|4.0|ticket T1 actual hours: 3.0000" + " sealed, 4.0000 now"))
                .anyMatch(row -> row.startsWith("earned labour cost|2026-09|78.0|104.0|ticket T1 labour cost"));
    }
}
