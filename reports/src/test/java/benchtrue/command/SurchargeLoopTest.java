package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.BanjoShop;
import benchtrue.Office;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A line for banjos is drafted, taken, quoted with, and known to what comes after: findings, follow-up, the next draft. */
class SurchargeLoopTest {
    private static final String FIRST = "2026-06-30";
    private static final String BOOK = "2026-08-01";
    private static final String LATER = "2026-10-31";
    private static final int DECISION = 5;
    private static final int REPAIR_TYPE = 9;
    private static final int WHEN = 10;
    private static final String TAKE = """
              Dim sheet As Object
              sheet = book.Sheets.getByName("Surcharges")
              sheet.getCellByPosition(5, 4).String = "take"
            """;

    @TempDir
    Path shop;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private BanjoShop jobs;

    @BeforeEach
    void nutsOnBanjosTakeTwiceAsLong() throws IOException {
        jobs = new BanjoShop(shop);
    }

    @Test
    void aLineOfABookThatIsWithdrawnGoesWithIt() throws Exception {
        night();
        run("adopt", taken().toString(), "--effective", BOOK, "--as-of", FIRST);
        run("withdraw", "--effective", BOOK, "--reason", "too early", "--as-of", FIRST);
        assertThat(shop.resolve("surcharges/" + BOOK + ".csv")).doesNotExist();
        assertThat(shop.resolve("price-book/" + BOOK + ".csv")).doesNotExist();
        try (Stream<Path> kept = Files.list(shop.resolve("decisions"))) {
            assertThat(kept).anyMatch(file -> file.getFileName().toString().startsWith("surcharges-"));
        }
        run("nightly", "--as-of", FIRST);
        assertThat(rows(FIRST, "causes.csv", "nut")).as("asked again").hasSize(1);
    }

    @Test
    void aLineTakenInTheWorkbookIsQuotedAndKnownAfterwards() throws Exception {
        night();
        takenAndQuoted(taken());
    }

    @Test
    void aLineThatNobodyQuotesIsSaidToBringNothing() throws Exception {
        night();
        run("adopt", taken().toString(), "--effective", BOOK, "--as-of", FIRST);
        jobs.jobs("B", LocalDate.parse(BOOK), 60, 1, 2);
        run("nightly", "--as-of", LATER);
        assertThat(Files.readString(shop.resolve("out/" + LATER + "/review.html")))
                .containsPattern("Where a line with a condition was changed, 0 of [0-9]+ accepted quotes since are"
                        + " priced by it\\.")
                .contains("It changed takings by about €0 so far");
        assertThat(Files.readString(shop.resolve("out/" + LATER + "/digest.txt")))
                .contains("adopted: 0 repairs and 1 line with a condition of the price book from");
    }

    /** A letter less in a condition, and the line would hold for no instrument at all. */
    @Test
    void aLineForOtherInstrumentsThanWereDraftedIsNeverAdopted() throws Exception {
        night();
        Path decided = taken(row -> row.createCell(WHEN).setCellValue("bango"));
        assertThat(exit("adopt", decided.toString(), "--effective", BOOK, "--as-of", FIRST))
                .isEqualTo(65);
        assertThat(err.toString()).contains("sheet Surcharges, cell F3", "lines that are not as they were drafted");
        assertThat(shop.resolve("surcharges")).doesNotExist();
        assertThat(shop.resolve("price-book/" + BOOK + ".csv")).doesNotExist();
    }

    private Path taken() throws Exception {
        return taken(row -> {});
    }

    private Path taken(Consumer<Row> alsoChanged) throws Exception {
        Path decided = shop.resolve("decided.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook(draft().toFile());
                OutputStream file = Files.newOutputStream(decided)) {
            Row line = row(workbook.getSheet("Surcharges"));
            line.getCell(DECISION).setCellValue("take");
            alsoChanged.accept(line);
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            workbook.write(file);
        }
        return decided;
    }

    @Test
    @Tag("office")
    void theSameThroughAnotherProgram() throws Exception {
        night();
        Path decided = shop.resolve("decided.xlsx");
        new Office(shop.resolve("office")).edit(draft(), decided, TAKE);
        takenAndQuoted(decided);
    }

    private Path draft() throws IOException {
        return shop.resolve("out/" + FIRST + "/price-book-revision.xlsx").toRealPath();
    }

    private void night() throws IOException {
        run("nightly", "--as-of", FIRST);
        assertThat(rows(FIRST, "causes.csv", "nut")).singleElement().satisfies(row -> {
            assertThat(row).startsWith("nut,instrument-class,banjo,");
            assertThat(row).endsWith("\"a line of its own for them, the others' price stays\"");
        });
        assertThat(Files.readString(shop.resolve("out/" + FIRST + "/charts/cause-nut-instrument-class.svg")))
                .contains("times as long as the others", "on flat top instruments");
        List<String> nut = List.of(rows(FIRST, "revision.csv", "nut").get(0).split(","));
        assertThat(Double.parseDouble(nut.get(2))).as("the others' hours stay").isBetween(1.9, 2.1);
    }

    private void takenAndQuoted(Path decided) throws Exception {
        run("adopt", decided.toString(), "--effective", BOOK, "--as-of", FIRST);
        assertThat(out.toString()).contains("+ Nut, on banjo instruments");
        assertThat(exit("adopt", decided.toString(), "--effective", BOOK, "--as-of", FIRST))
                .isNotZero();
        assertThat(err.toString())
                .contains("Surcharges", "Nut, on banjo instruments", "has already", "each line adopted once");
        String line =
                Files.readAllLines(shop.resolve("surcharges/" + BOOK + ".csv")).get(1);
        assertThat(line).startsWith("nut,banjo,");
        double more = Double.parseDouble(line.split(",")[2]);
        assertThat(more).isBetween(1.5, 2.5);
        jobs.jobs("B", LocalDate.parse(BOOK), 60, 1, 2 + more);
        run("nightly", "--as-of", LATER);
        assertThat(rows(LATER, "causes.csv", "nut")).noneMatch(row -> row.contains("banjo"));
        List<String> found = List.of(rows(LATER, "findings.csv", "nut").get(0).split(","));
        assertThat(Double.parseDouble(found.get(6))).as("hours per quoted hour").isBetween(0.9, 1.1);
        assertThat(Files.readString(shop.resolve("out/" + LATER + "/review.html")))
                .as("the follow-up knows what the line changed")
                .contains("changed 1 repair", "It worked: jobs took 1.")
                .containsPattern("Where a line with a condition was changed, ([0-9]+) of \\1 accepted quotes since")
                .doesNotContain("It changed takings by about €0 ");
        assertThat(Files.readString(shop.resolve("out/" + LATER + "/quote-table.html")))
                .as("who writes quotes is told")
                .contains("Nut, on banjo instruments: add ");
        assertThat(Files.readString(shop.resolve("out/" + LATER + "/price-list.html")))
                .contains("+ Nut, on banjo instruments", "A row with + is added to its repair");
        assertThat(Files.readAllLines(shop.resolve("out/" + LATER + "/backtest.csv")))
                .hasSizeGreaterThan(1);
        List<String[]> told = Files.readAllLines(shop.resolve("out/" + LATER + "/lines.csv")).stream()
                .map(row -> row.split(",", -1))
                .toList();
        int then = List.of(told.get(0)).indexOf("book_hours_then");
        assertThat(told)
                .as("a banjo's quote stands against book and line together")
                .filteredOn(row -> row[0].startsWith("B") && row[2].equals("nut"))
                .extracting(row -> row[4] + " " + Double.parseDouble(row[then]))
                .containsOnly("flat-top 2.0", "banjo " + (2 + more));
    }

    private Row row(Sheet sheet) {
        return Stream.iterate(0, number -> number <= sheet.getLastRowNum(), number -> number + 1)
                .map(sheet::getRow)
                .filter(row -> row != null && row.getCell(REPAIR_TYPE) != null)
                .filter(row -> row.getCell(REPAIR_TYPE).getStringCellValue().equals("nut"))
                .findFirst()
                .orElseThrow();
    }

    private List<String> rows(String night, String table, String repairType) throws IOException {
        return Files.readAllLines(shop.resolve("out/" + night + "/" + table)).stream()
                .filter(row -> row.startsWith(repairType + ","))
                .toList();
    }

    private void run(String command, String... more) {
        assertThat(exit(command, more)).as(err.toString()).isZero();
    }

    private int exit(String command, String... more) {
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        String[] arguments = Stream.concat(Stream.of(command, "--shop", shop.toString()), Stream.of(more))
                .toArray(String[]::new);
        return new Program(new PrintWriter(out), new PrintWriter(err), false, clock, Map.of()).run(arguments);
    }
}
