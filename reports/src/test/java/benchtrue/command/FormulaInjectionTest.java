package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.sample.SampleOptions;
import benchtrue.sample.Tidiness;
import benchtrue.sample.WriteSample;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Formulas planted in every text column of every table stay text wherever a spreadsheet program may open them. */
class FormulaInjectionTest {
    private static final String PLANTED = "PLANTED";
    private static final String[] STARTS = {"=", "+", "-", "@"};
    /** Columns whose words are the shop's own; those of a closed list are planted in one row each and set aside. */
    private static final Set<String> OWN_WORDS = Set.of(
            "ticket",
            "line",
            "repair_type",
            "rework_of",
            "rework_of_line",
            "instrument_class",
            "traits",
            "quoted_by",
            "entry",
            "use",
            "technician",
            "part",
            "account",
            "title",
            "family",
            "grade",
            "note",
            "hazards");

    private static final Set<String> CLOSED_LISTS = Set.of(
            "status",
            "outcome",
            "charge_kind",
            "quote_basis",
            "paid_by",
            "return_reason",
            "kind",
            "behaviour",
            "reason",
            "opened",
            "work_date",
            "hours",
            "quantity",
            "from");

    @TempDir
    static Path shop;

    private static Outputs outputs;

    @BeforeAll
    static void aNightOnTheShop() throws IOException {
        WriteSample.write(
                SampleOptions.standard(shop).withTickets(150).withYears(1).with(Tidiness.TIDY));
        for (String folder : List.of("exports", "price-book")) {
            try (Stream<Path> tables = Files.list(shop.resolve(folder))) {
                for (Path table : tables.toList()) {
                    plant(table);
                }
            }
        }
        StringWriter said = new StringWriter();
        PrintWriter screen = new PrintWriter(said);
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        int exit = new Program(screen, screen, false, clock, Map.of())
                .run("nightly", "--shop", shop.toString(), "--as-of", "2026-10-31");
        assertThat(exit).as(said.toString()).isZero();
        outputs = new Outputs(shop.resolve("out/2026-10-31"));
    }

    private static void plant(Path table) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        List<List<String>> rows = new ArrayList<>();
        try (Reader text = Files.newBufferedReader(table);
                CSVParser records = CSVParser.parse(text, format)) {
            List<String> header = records.getHeaderNames();
            rows.add(header);
            List<String> wrong = header.stream().filter(CLOSED_LISTS::contains).toList();
            for (CSVRecord record : records) {
                List<String> row = new ArrayList<>();
                for (String column : header) {
                    row.add(OWN_WORDS.contains(column) ? planted(record.get(column)) : record.get(column));
                }
                int number = (int) records.getRecordNumber() - 10;
                if (number >= 0 && number < wrong.size() && !table.getParent().endsWith("price-book")) {
                    row.set(header.indexOf(wrong.get(number)), "=" + PLANTED + "()");
                }
                rows.add(row);
            }
        }
        try (CSVPrinter printer = new CSVPrinter(Files.newBufferedWriter(table), CSVFormat.RFC4180)) {
            printer.printRecords(rows);
        }
    }

    /** The same word becomes the same formula in every table, so that keys still meet. */
    private static String planted(String words) {
        if (words.isEmpty() || words.equals("one-off")) {
            return words;
        }
        return Arrays.stream(words.split(";"))
                .map(word -> STARTS[Math.floorMod(word.hashCode(), STARTS.length)] + PLANTED + "(" + word + ")")
                .collect(Collectors.joining(";"));
    }

    @Test
    void noCellOfAnyTableBeginsAsAFormulaUnlessItIsANumber() throws IOException {
        int seen = 0;
        try (Stream<Path> found = Files.walk(outputs.folder().toRealPath())) {
            for (Path file :
                    found.filter(path -> path.toString().endsWith(".csv")).toList()) {
                try (Reader text = Files.newBufferedReader(file);
                        CSVParser records = CSVParser.parse(text, CSVFormat.RFC4180)) {
                    for (CSVRecord record : records) {
                        for (String cell : record) {
                            seen += cell.contains(PLANTED) ? 1 : 0;
                            assertThat(cell)
                                    .as(file + " line " + records.getCurrentLineNumber())
                                    .matches("(?s)(?![=+@\\t\\r-]).*|-[0-9.]+");
                        }
                    }
                }
            }
        }
        assertThat(seen).isGreaterThan(1_000);
        assertThat(outputs.folder().resolve("set-aside/tickets.csv")).content().contains("'=" + PLANTED + "()");
    }

    @Test
    void noCellOfAWorkbookIsAFormulaOfTheirs() throws IOException {
        for (String file : List.of("review.xlsx", "price-book-revision.xlsx", "price-list.xlsx")) {
            int seen = 0;
            try (Workbook workbook = outputs.workbook(file)) {
                for (Sheet sheet : workbook) {
                    for (Row row : sheet) {
                        for (Cell cell : row) {
                            if (cell.getCellType() == CellType.FORMULA) {
                                assertThat(cell.getCellFormula()).doesNotContain(PLANTED);
                            } else if (cell.getCellType() == CellType.STRING) {
                                seen += cell.getStringCellValue().contains(PLANTED) ? 1 : 0;
                            }
                        }
                    }
                }
            }
            assertThat(seen).as(file).isGreaterThan(100);
        }
    }
}
