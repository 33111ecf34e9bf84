package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Workbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop that records no wages, parts, overheads or paid hours is shown no costs of zero. */
class UnknownIsNotZeroTest {
    private static final Map<String, String> COSTS = Map.of(
            "labour_cost", "Labour cost",
            "parts_cost", "Parts cost",
            "overhead_cost", "Overhead carried",
            "margin", "Margin");

    @TempDir
    Path shop;

    private Outputs outputs;

    @BeforeEach
    void aNightWithTheNeededTablesOnly() throws IOException {
        List<String> tickets = new ArrayList<>(List.of("ticket,opened,closed,status,instrument_class"));
        List<String> lines =
                new ArrayList<>(List.of("ticket,line,repair_type,quoted_hours,quoted_labour,quoted_parts"));
        List<String> times = new ArrayList<>(List.of("entry,ticket,line,technician,work_date,hours"));
        for (int i = 0; i < 24; i++) {
            String day = "2026-0" + (3 + i % 6) + "-1" + i % 10;
            tickets.add("T" + i + "," + day + "," + day + ",closed,mandolin");
            lines.add("T" + i + ",1,setup,2,200,");
            lines.add("T" + i + ",2,refret,8,800,");
            times.add("E" + i + ",T" + i + (i % 2 == 0 ? ",1," : ",,") + "ann," + day + "," + (3 + i % 4));
            times.add("F" + i + ",T" + i + (i % 2 == 0 ? ",2," : ",,") + "ann," + day + "," + (9 + i % 4));
        }
        write("exports/tickets.csv", tickets);
        write("exports/quoted-lines.csv", lines);
        write("exports/time-log.csv", times);
        write(
                "price-book/2026-01-01.csv",
                List.of(
                        "repair_type,title,family,book_hours,book_labour",
                        "setup,Setup,setup,2,200",
                        "refret,Refret,fretwork,8,800"));
        StringWriter said = new StringWriter();
        PrintWriter screen = new PrintWriter(said);
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        int exit = new Program(screen, screen, false, clock, Map.of())
                .run("nightly", "--shop", shop.toString(), "--as-of", "2026-10-31");
        assertThat(exit).as(said.toString()).isZero();
        outputs = new Outputs(shop.resolve("out/2026-10-31"));
    }

    private void write(String file, List<String> rows) throws IOException {
        Files.createDirectories(shop.resolve(file).getParent());
        Files.writeString(shop.resolve(file), String.join("\r\n", rows) + "\r\n");
    }

    @Test
    void tablesRecordAndPageLeaveCostsOutOrSayNotKnown() throws IOException {
        for (Map<String, String> line : outputs.table("lines.csv")) {
            assertThat(line.get("labour_revenue")).isNotEmpty();
            COSTS.keySet().forEach(cost -> assertThat(line.get(cost)).as(cost).isEmpty());
        }
        String record = outputs.text("run.json");
        assertThat(record.substring(record.indexOf("\"money\"")))
                .contains("\"labour_revenue\"")
                .doesNotContain("\"labour_cost\"", "\"overhead_cost\"", "\"margin\"", "\"result\"");
        assertThat(outputs.words("review.html"))
                .contains(
                        "Costs not known",
                        "Must bring not known",
                        "Result not known",
                        "Paid time in the log not known");
    }

    @Test
    void workbooksLeaveTheirCellsEmpty() throws IOException {
        try (Workbook review = outputs.workbook("review.xlsx")) {
            for (Map<String, Cell> line : Outputs.below(review.getSheet("Lines"), "Labour cost")) {
                COSTS.values().forEach(cost -> empty(cost, line.get(cost)));
            }
            for (String name : List.of(
                    "BenchHourCost",
                    "BenchHourBreakEven",
                    "BenchHourForTarget",
                    "BenchHourResult",
                    "PaidTimeInTheLog",
                    "PaidTimeSold")) {
                empty(name, Outputs.named(review, name));
            }
        }
    }

    private static void empty(String what, Cell cell) {
        if (cell != null && cell.getCellType() == CellType.FORMULA) {
            assertThat(cell.getCachedFormulaResultType()).as(what).isEqualTo(CellType.STRING);
            assertThat(cell.getStringCellValue()).as(what).isEmpty();
        } else if (cell != null) {
            assertThat(cell.getCellType()).as(what).isEqualTo(CellType.BLANK);
        }
    }

    @Test
    void hoursDealtFromATicketLookUnlikeLoggedOnes() throws IOException {
        List<Map<String, String>> lines = outputs.table("lines.csv");
        int dealt = 0;
        try (Workbook review = outputs.workbook("review.xlsx")) {
            List<Map<String, Cell>> rows = Outputs.below(review.getSheet("Lines"), "Bench hours");
            assertThat(rows).hasSameSizeAs(lines);
            for (int i = 0; i < rows.size(); i++) {
                boolean split = Double.parseDouble(lines.get(i).get("split_hours")) > 0;
                Cell hours = rows.get(i).get("Bench hours");
                assertThat(review.getFontAt(hours.getCellStyle().getFontIndex()).getItalic())
                        .as(lines.get(i).toString())
                        .isEqualTo(split);
                dealt += split ? 1 : 0;
            }
        }
        assertThat(dealt).isBetween(1, lines.size() - 1);
        assertThat(outputs.words("review.html")).contains("a share of the ticket's hours", "logged to the job");
    }
}
