package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.workbook.draft.WriteRevisionWorkbook;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The owner decides in the drafted workbook, and the next price book is what was decided. */
class AdoptTest {
    private static final int HEADING_ROW = 13;
    private static final int KEY = 24;
    private static final int HOURS = 8;
    private static final int PROPOSED = 10;
    private static final int DECISION = 14;
    private static final int OWN = 15;
    private static final int REASON = 16;
    private static final int UNTIL = 17;
    private static final int NEW_HOURS = 18;
    private static final int NEW_PRICE = 19;

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private Path shop;
    private Path draft;

    @AfterAll
    static void theNightIsNeverChanged() {
        assertThat(OneNight.onTheSample().shop().resolve("decisions")).doesNotExist();
    }

    @BeforeEach
    void aCopyOfTheShop() throws IOException {
        shop = folder.resolve("shop");
        copy(OneNight.onTheSample().shop(), shop);
        draft = folder.resolve("decided.xlsx");
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file)), java.nio.file.LinkOption.NOFOLLOW_LINKS);
            }
        }
    }

    private int run(String command, String... more) {
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        String[] arguments = Stream.concat(
                        Stream.of(command, "--shop", shop.toString(), "--as-of", "2026-10-31"), Stream.of(more))
                .toArray(String[]::new);
        return new Program(new PrintWriter(out), new PrintWriter(err), false, clock, Map.of()).run(arguments);
    }

    private int adopt() {
        return run("adopt", draft.toString(), "--effective", "2026-11-15");
    }

    private void decide(Consumer<Sheet> decisions) throws IOException {
        Path drafted = shop.resolve("out/2026-10-31").resolve(WriteRevisionWorkbook.FILE);
        try (InputStream bytes = Files.newInputStream(drafted);
                XSSFWorkbook workbook = new XSSFWorkbook(bytes)) {
            decisions.accept(workbook.getSheet("Decide"));
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            try (OutputStream saved = Files.newOutputStream(draft)) {
                workbook.write(saved);
            }
        }
    }

    private static Row row(Sheet sheet, String repairType) {
        for (Row row : sheet) {
            if (row.getRowNum() >= HEADING_ROW
                    && row.getCell(KEY) != null
                    && row.getCell(KEY).getStringCellValue().equals(repairType)) {
                return row;
            }
        }
        throw new AssertionError("no row for " + repairType);
    }

    private static void own(Sheet sheet, String repairType, double hours) {
        row(sheet, repairType).getCell(DECISION).setCellValue("own");
        row(sheet, repairType).getCell(OWN).setCellValue(hours);
    }

    private String book(String repairType) throws IOException {
        return Files.readAllLines(shop.resolve("price-book/2026-11-15.csv")).stream()
                .filter(line -> line.startsWith(repairType + ","))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatTheProgramWritesOnlyItsUserMayOpen() throws IOException {
        decide(sheet -> own(sheet, "refret", 11.5));
        assertThat(adopt()).as(err.toString()).isZero();
        assertThat(run("close", "--month", "2026-09")).as(err.toString()).isZero();
        List<Path> written = new ArrayList<>(List.of(shop.resolve("price-book/2026-11-15.csv")));
        for (String folder : List.of("decisions", "close")) {
            try (Stream<Path> files = Files.walk(shop.resolve(folder))) {
                files.forEach(written::add);
            }
        }
        try (Stream<Path> files = Files.walk(OneNight.onTheSample().shop().resolve("out"))) {
            files.filter(file -> !Files.isSymbolicLink(file)).forEach(written::add);
        }
        assertThat(written)
                .hasSizeGreaterThan(30)
                .allSatisfy(file -> assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                        .isEqualTo(Files.isDirectory(file) ? "rwx------" : "rw-------"));
    }

    @Test
    void theNextBookHoldsWhatTheOwnerDecided() throws IOException {
        double[] taken = new double[1];
        decide(sheet -> {
            own(sheet, "refret", 11.5);
            row(sheet, "neck-reset").getCell(DECISION).setCellValue("take");
            taken[0] = row(sheet, "neck-reset").getCell(PROPOSED).getNumericCellValue();
        });
        assertThat(adopt()).as(err.toString()).isZero();
        assertThat(book("refret")).contains(",11.5000,");
        assertThat(book("neck-reset")).contains(String.format(java.util.Locale.ROOT, ",%.4f,", taken[0]));
        assertThat(shop.resolve("decisions/2026-11-15.json"))
                .content()
                .contains("\"decided_on\": \"2026-10-31\"", "\"decision\": \"own\"", "\"hours\": \"11.5000\"");
        assertThat(out.toString()).contains("Price book from").contains("* Refret");
        assertThat(run("nightly", "--quiet"))
                .as("the next night reads the new book")
                .isZero();
    }

    @Test
    void whatIsHandedOutIsThereAtOnceAndMovesIntoTheNextNight() throws IOException {
        decide(sheet -> own(sheet, "refret", 11.5));
        assertThat(adopt()).as(err.toString()).isZero();
        Path adopted = shop.resolve("out/adopted");
        assertThat(out.toString()).contains("To print and for your systems: " + adopted);
        assertThat(new Outputs(adopted).words("price-list.html"))
                .contains("Price list from", "1 repair changes", "11.50\u00a0h")
                .containsOnlyOnce(" changed ");
        assertThat(new Outputs(adopted).words("quote-table.html")).contains("11.50\u00a0h", "60\u00a0% of jobs fit");
        assertThat(new Outputs(adopted).words("price-explained.html"))
                .contains("What the hours rest on")
                .doesNotContainIgnoringCase("wage")
                .doesNotContainIgnoringCase("margin");
        try (Workbook sheets = new Outputs(adopted).workbook("price-list.xlsx")) {
            assertThat(sheets.getSheet("From 2026-11-15")).isNotNull();
            assertThat(sheets.getSheet("Quote table")).isNotNull();
        }
        assertThat(run("nightly", "--quiet")).as(err.toString()).isZero();
        assertThat(adopted).doesNotExist();
        assertThat(shop.resolve("out/2026-10-31/price-list.html")).content().contains("11.50");
    }

    @Test
    void anAdoptedBookGoesBackToTheQuotingSystemAsThatOneWritesIt() throws IOException {
        Path newest = shop.resolve("price-book/2026-10-01.csv");
        List<String> rows = new ArrayList<>(List.of("Nr;Leistung;Gruppe;Stunden;Preis;Regal"));
        try (Stream<Path> books = Files.list(shop.resolve("price-book"))) {
            Path last = books.sorted().reduce((one, other) -> other).orElseThrow();
            for (Map<String, String> row :
                    new Outputs(last.getParent()).table(last.getFileName().toString())) {
                rows.add(String.join(
                        ";",
                        row.get("repair_type"),
                        row.get("title"),
                        row.get("family"),
                        row.get("book_hours").replace('.', ','),
                        row.get("book_labour").replace('.', ',') + " \u20ac",
                        "R\u00fcckwand " + rows.size()));
            }
        }
        Charset windows = Charset.forName("windows-1252");
        Files.write(newest, (String.join("\r\n", rows) + "\r\n").getBytes(windows));
        Files.writeString(
                shop.resolve("shop.toml"),
                Files.readString(shop.resolve("shop.toml")).replaceAll("currency.*", "currency = \"EUR\"") + """

                        [[files]]
                        name = "2026-1*.csv"
                        table = "price-book"
                        [files.columns]
                        repair_type = "Nr"
                        title = "Leistung"
                        family = "Gruppe"
                        book_hours = "Stunden"
                        book_labour = "Preis"
                        """);
        assertThat(run("nightly", "--quiet")).as(err.toString()).isZero();
        decide(sheet -> own(sheet, "refret", 11.5));
        assertThat(adopt()).as(err.toString()).isZero();
        assertThat(run("nightly", "--quiet")).as(err.toString()).isZero();
        Path file = shop.resolve("out/2026-10-31/for-your-systems/2026-11-15.csv");
        List<String> written = List.of(new String(Files.readAllBytes(file), windows).split("\r\n"));
        assertThat(written).hasSameSizeAs(rows);
        for (int row = 0; row < rows.size(); row++) {
            if (rows.get(row).startsWith("refret;")) {
                assertThat(written.get(row)).contains(";11,5;").endsWith(" \u20ac;R\u00fcckwand " + row);
            } else {
                assertThat(written.get(row)).isEqualTo(rows.get(row));
            }
        }
    }

    @Test
    void aBookThatARuleForNumbersWouldReadOtherwiseIsNotWritten() throws IOException {
        decide(sheet -> own(sheet, "refret", 11.5));
        Files.writeString(
                shop.resolve("shop.toml"),
                Files.readString(shop.resolve("shop.toml"))
                        + "\n[[files]]\nname = \"2026-11*\"\ntable = \"price-book\"\nhours = \"minutes\"\n");
        assertThat(adopt()).isEqualTo(78);
        assertThat(err.toString()).contains("line ", "2026-11*", "Nothing was written");
        assertThat(shop.resolve("price-book/2026-11-15.csv")).doesNotExist();
    }

    @Test
    void aMethodThatIsNeitherIsToldWithItsCell() throws IOException {
        refused(
                sheet -> {
                    own(sheet, "refret", 11.5);
                    Workbook workbook = sheet.getWorkbook();
                    String place = workbook.getName("Method").getRefersToFormula();
                    CellReference cell = new CellReference(place);
                    sheet.getRow(cell.getRow()).getCell(cell.getCol()).setBlank();
                    sheet.getRow(cell.getRow()).getCell(cell.getCol()).setCellValue("other");
                },
                "cell F9",
                "own or simpler");
    }

    private void fretworkAtItsOwnRate() throws IOException {
        Files.writeString(
                shop.resolve("shop.toml"),
                Files.readString(shop.resolve("shop.toml"))
                        + "\n[policy.family.fretwork]\nrate = 131\nprice_rounding = 5\n");
        assertThat(run("nightly", "--quiet")).as(err.toString()).isZero();
    }

    @Test
    void aFamilyIsDraftedDecidedAndWrittenAtItsOwnRate() throws IOException {
        fretworkAtItsOwnRate();
        assertThat(Files.readString(shop.resolve("out/2026-10-31/run.json")))
                .contains("\"policy.family\"", "\"rate\": \"131.0000\"");
        decide(sheet -> {
            own(sheet, "refret", 20);
            own(sheet, "neck-reset", 20);
        });
        assertThat(adopt()).as(err.toString()).isZero();
        assertThat(book("refret")).contains(",20.0000,2620.0000,");
        assertThat(book("neck-reset")).contains(",20.0000,1900.0000,");
        assertThat(run("nightly", "--quiet")).as(err.toString()).isZero();
    }

    @Test
    void aFamilysRateThatIsNoAmountIsRefusedWithItsCell() throws IOException {
        fretworkAtItsOwnRate();
        refused(
                sheet -> {
                    own(sheet, "refret", 20);
                    for (Row row : sheet.getWorkbook().getSheet("Families")) {
                        if (row.getCell(0).getStringCellValue().equals("fretwork")) {
                            row.getCell(1).setCellValue(-3);
                        }
                    }
                },
                "cell B",
                "an amount above 0");
    }

    @Test
    void theSameRowTwiceIsRefusedWithItsCellAndChangesNothing() throws IOException {
        decide(sheet -> {
            own(sheet, "refret", 11.5);
            own(sheet, "neck-reset", 20);
        });
        assertThat(adopt()).as(err.toString()).isZero();
        String book = book("refret");
        assertThat(run("adopt", draft.toString(), "--effective", "2026-12-01")).isEqualTo(65);
        assertThat(err.toString())
                .contains("found 2 cells", "sheet Decide, cell O", "Refret", "decided on this draft before")
                .contains("in force from 2026-11-15");
        assertThat(adopt()).isEqualTo(65);
        assertThat(book("refret")).isEqualTo(book);
        assertThat(shop.resolve("price-book/2026-12-01.csv")).doesNotExist();
        assertThat(shop.resolve("decisions/2026-11-15.2.json")).doesNotExist();
    }

    @Test
    void oneDraftIsDecidedInSeveralSittings() throws IOException {
        decide(sheet -> own(sheet, "refret", 11.5));
        assertThat(adopt()).as(err.toString()).isZero();
        byte[] first = Files.readAllBytes(shop.resolve("decisions/2026-11-15.json"));
        decide(sheet -> own(sheet, "neck-reset", 20));
        assertThat(adopt()).as(err.toString()).isZero();
        assertThat(book("refret")).contains(",11.5000,");
        assertThat(book("neck-reset")).contains(",20.0000,");
        assertThat(shop.resolve("decisions/2026-11-15.json")).hasBinaryContent(first);
        assertThat(shop.resolve("decisions/2026-11-15.2.json"))
                .content()
                .contains("neck-reset")
                .doesNotContain("refret");
    }

    @Test
    void theNextBookBeginsFromTheNewestAdoptedOneAndNothingDecidedIsAskedAgain() throws IOException {
        decide(sheet -> own(sheet, "refret", 11.5));
        assertThat(adopt()).as(err.toString()).isZero();
        assertThat(run("nightly", "--quiet")).as(err.toString()).isZero();
        assertThat(Files.readAllLines(shop.resolve("out/2026-10-31/revision.csv")))
                .filteredOn(line -> line.startsWith("refret,"))
                .singleElement()
                .asString()
                .contains("refret,11.5000,11.5000,", "decided on Oct 31, 2026, in force from Nov 15, 2026");
        decide(sheet -> own(sheet, "neck-reset", 20));
        assertThat(run("adopt", draft.toString(), "--effective", "2027-01-01"))
                .as(err.toString())
                .isZero();
        assertThat(Files.readAllLines(shop.resolve("price-book/2027-01-01.csv")))
                .anyMatch(line -> line.startsWith("refret,") && line.contains(",11.5000,"))
                .anyMatch(line -> line.startsWith("neck-reset,") && line.contains(",20.0000,"));
    }

    @Test
    void everyOutputShowsTheBookInForceAndTheOneToCome() throws IOException {
        decide(sheet -> own(sheet, "refret", 11.5));
        assertThat(adopt()).as(err.toString()).isZero();
        assertThat(run("nightly")).as(err.toString()).isZero();
        Path results = shop.resolve("out/2026-10-31");
        String toCome = "To come: a price book with 1 repair decided on Oct 31, 2026, in force from Nov 15, 2026.";
        assertThat(out.toString()).contains("In force: the price book from", toCome);
        assertThat(results.resolve("review.html"))
                .content()
                .contains("In force: the price book from", toCome)
                .contains("Decided on Oct 31, 2026, in force from Nov 15, 2026");
        assertThat(results.resolve("digest.txt"))
                .content()
                .contains(
                        "Decided on Oct 31, 2026 and adopted: 1 repair of the price book from Nov 15, 2026.",
                        "In force from Nov 15, 2026: a price book decided on Oct 31, 2026.");
        for (String name : List.of(WriteRevisionWorkbook.FILE, "review.xlsx")) {
            try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(results.resolve(name)))) {
                List<String> texts = new ArrayList<>();
                workbook.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> texts.add(cell.toString()))));
                assertThat(texts).as(name).anyMatch(text -> text.contains(toCome));
            }
        }
    }

    @Test
    void aLaterBookTakesOverWhatIsDecidedForAnEarlierDayAndWhatItDecidedItselfNeedsAWord() throws IOException {
        decide(sheet -> own(sheet, "refret", 11.5));
        assertThat(run("adopt", draft.toString(), "--effective", "2027-01-01"))
                .as(err.toString())
                .isZero();
        assertThat(run("nightly", "--quiet")).as(err.toString()).isZero();
        decide(sheet -> {
            own(sheet, "refret", 12);
            own(sheet, "neck-reset", 20);
        });
        assertThat(adopt()).isEqualTo(64);
        assertThat(err.toString()).contains("Refret", "12.00", "but from Jan 1, 2027 11.50", "--confirm");
        assertThat(shop.resolve("price-book/2026-11-15.csv")).doesNotExist();
        assertThat(run("adopt", draft.toString(), "--effective", "2026-11-15", "--confirm"))
                .as(err.toString())
                .isZero();
        assertThat(book("refret")).contains(",12.0000,");
        assertThat(Files.readAllLines(shop.resolve("price-book/2027-01-01.csv")))
                .anyMatch(line -> line.startsWith("refret,") && line.contains(",11.5000,"))
                .anyMatch(line -> line.startsWith("neck-reset,") && line.contains(",20.0000,"));
    }

    @Test
    void aDayThatIsNotAfterTheDecisionNeedsAReason() throws IOException {
        decide(sheet -> own(sheet, "refret", 11.5));
        for (String[] refused : new String[][] {
            {"--effective", "2026-10-31"},
            {"--effective", "2026-10-01"},
            {"--effective", "2026-10-01", "--effective-past"},
            {"--effective", "2026-11-15", "--effective-past", "--reason", "used already"},
            {"--effective", "2022-01-01", "--effective-past", "--reason", "before the book in force"}
        }) {
            String[] arguments = Stream.concat(Stream.of(draft.toString()), Stream.of(refused))
                    .toArray(String[]::new);
            assertThat(run("adopt", arguments)).as(String.join(" ", refused)).isEqualTo(64);
        }
        assertThat(shop.resolve("decisions")).doesNotExist();
        assertThat(run(
                        "adopt",
                        draft.toString(),
                        "--effective",
                        "2026-10-01",
                        "--effective-past",
                        "--reason",
                        "quoted so since"))
                .as(err.toString())
                .isZero();
        assertThat(shop.resolve("decisions/2026-10-01.json"))
                .content()
                .contains("\"used_already_because\": \"quoted so since\"");
        assertThat(run("withdraw", "--effective", "2026-10-01", "--reason", "no"))
                .isEqualTo(64);
        assertThat(err.toString()).contains("is in force already");
    }

    @Test
    void aBookIsWithdrawnBeforeItsFirstDayAndNothingIsErased() throws IOException {
        decide(sheet -> own(sheet, "refret", 11.5));
        assertThat(adopt()).as(err.toString()).isZero();
        byte[] book = Files.readAllBytes(shop.resolve("price-book/2026-11-15.csv"));
        assertThat(run("nightly", "--quiet")).as(err.toString()).isZero();
        decide(sheet -> own(sheet, "neck-reset", 20));
        assertThat(run("adopt", draft.toString(), "--effective", "2027-01-01"))
                .as(err.toString())
                .isZero();
        assertThat(run("withdraw", "--effective", "2026-11-15", "--reason", "the press broke"))
                .as(err.toString())
                .isZero();
        assertThat(out.toString()).contains("Withdrawn: the price book from Nov 15, 2026");
        assertThat(shop.resolve("price-book/2026-11-15.csv")).doesNotExist();
        assertThat(shop.resolve("decisions/2026-11-15.withdrawn.csv")).hasBinaryContent(book);
        assertThat(shop.resolve("decisions/2026-11-15.json")).exists();
        assertThat(shop.resolve("decisions/2026-11-15.withdrawn.json"))
                .content()
                .contains("the press broke");
        assertThat(Files.readAllLines(shop.resolve("price-book/2027-01-01.csv")))
                .as("a later book that only took the row over has the old hours again")
                .noneMatch(line -> line.startsWith("refret,") && line.contains(",11.5000,"))
                .anyMatch(line -> line.startsWith("neck-reset,") && line.contains(",20.0000,"));
        assertThat(run("withdraw", "--effective", "2026-11-15", "--reason", "again"))
                .isEqualTo(66);
        assertThat(run("withdraw", "--effective", "2027-01-01", "--reason", " "))
                .isEqualTo(64);
    }

    @Test
    void aDraftOfOtherFiguresIsRefused() throws IOException {
        decide(sheet -> own(sheet, "refret", 11.5));
        Path table = shop.resolve("out/2026-10-31/revision.csv").toRealPath();
        Files.writeString(table, Files.readString(table) + "x");
        assertThat(adopt()).isEqualTo(65);
        assertThat(err.toString()).contains("another night");
        assertThat(shop.resolve("decisions")).doesNotExist();
    }

    @Test
    void whatDoesNotAddUpIsRefusedWithTheCellNamed() throws IOException {
        refused(sheet -> row(sheet, "refret").getCell(DECISION).setCellValue("maybe"), "cell O", "take, keep, own");
        refused(sheet -> row(sheet, "refret").getCell(DECISION).setCellValue("own"), "cell P", "a number");
        refused(sheet -> row(sheet, "refret").getCell(DECISION).setCellValue("keep"), "cell O", "reason");
        refused(sheet -> own(sheet, "neck-reset", 0.5), "cell O", "shortest safe hours");
        refused(sheet -> sheet.getRow(HEADING_ROW - 1).createCell(KEY).setCellValue("moved"), "cell", "heading");
        refused(sheet -> {}, "no decision");
        refused(
                sheet -> {
                    own(sheet, "refret", 11.5);
                    Cell price = row(sheet, "refret").getCell(NEW_PRICE);
                    price.setBlank();
                    price.setCellValue(1);
                },
                "cell T",
                "recalculate");
    }

    private void refused(Consumer<Sheet> decisions, String... words) throws IOException {
        decide(decisions);
        err.getBuffer().setLength(0);
        assertThat(adopt()).as(err.toString()).isEqualTo(65);
        assertThat(err.toString()).contains(words);
        assertThat(shop.resolve("price-book/2026-11-15.csv")).doesNotExist();
    }

    @Test
    void anAdoptionThatWasKilledIsDoneAgainByTheSameCommand() throws IOException {
        decide(sheet -> own(sheet, "refret", 11.5));
        assertThat(adopt()).as(err.toString()).isZero();
        byte[] book = Files.readAllBytes(shop.resolve("price-book/2026-11-15.csv"));
        Files.delete(shop.resolve("price-book/2026-11-15.csv"));
        assertThat(adopt()).as(err.toString()).isZero();
        assertThat(shop.resolve("price-book/2026-11-15.csv")).hasBinaryContent(book);
        assertThat(shop.resolve("decisions/2026-11-15.2.json")).doesNotExist();
    }

    @Test
    void aBookWrittenByHandForADayToComeIsNeverRewritten() throws IOException {
        Path inForce;
        try (Stream<Path> books = Files.list(shop.resolve("price-book"))) {
            inForce = books.max(java.util.Comparator.naturalOrder()).orElseThrow();
        }
        Path byHand = shop.resolve("price-book/2026-12-24.csv");
        Files.copy(inForce, byHand);
        byte[] written = Files.readAllBytes(byHand);
        assertThat(run("nightly", "--quiet")).as(err.toString()).isZero();
        decide(sheet -> own(sheet, "refret", 11.5));
        assertThat(run("adopt", draft.toString(), "--effective", "2026-12-24")).isEqualTo(73);
        assertThat(err.toString()).contains("written by hand");
        assertThat(run("withdraw", "--effective", "2026-12-24", "--reason", "no"))
                .isEqualTo(64);
        assertThat(adopt()).as("its hours override what is decided now").isEqualTo(64);
        assertThat(run("adopt", draft.toString(), "--effective", "2026-11-15", "--confirm"))
                .as(err.toString())
                .isZero();
        assertThat(out.toString()).contains("Later: Refret", "but from Dec 24, 2026");
        assertThat(byHand).hasBinaryContent(written);
        assertThat(shop.resolve("decisions/2026-12-24.json")).doesNotExist();
    }

    @Test
    void aNightOfAnEarlierDayDoesNotKnowWhatWasDecidedLater() throws IOException {
        decide(sheet -> own(sheet, "refret", 11.5));
        assertThat(adopt()).as(err.toString()).isZero();
        byte[] before = Files.readAllBytes(shop.resolve("out/2026-09-30/revision.csv"));
        Clock clock = Clock.fixed(Instant.parse("2026-11-01T02:00:00Z"), ZoneOffset.UTC);
        int again = new Program(new PrintWriter(out), new PrintWriter(err), false, clock, Map.of())
                .run("nightly", "--shop", shop.toString(), "--as-of", "2026-09-30", "--quiet");
        assertThat(again).as(err.toString()).isZero();
        assertThat(shop.resolve("out/2026-09-30/revision.csv")).hasBinaryContent(before);
    }

    @Test
    void allFaultsOfAWorkbookAreToldAtOnce() throws IOException {
        decide(sheet -> {
            row(sheet, "refret").getCell(DECISION).setCellValue("maybe");
            row(sheet, "full-setup").getCell(DECISION).setCellValue("keep");
            row(sheet, "full-setup").getCell(REASON).setCellValue("new bench");
            row(sheet, "full-setup").getCell(UNTIL).setCellValue("in June");
            own(sheet, "neck-reset", 0.5);
        });
        assertThat(adopt()).isEqualTo(65);
        assertThat(err.toString())
                .contains("found 3 cells that can't be used")
                .containsPattern(
                        "sheet Decide, cell O[0-9]+, Refret on.*: found the text \"maybe\", expected take, keep, own")
                .containsPattern("sheet Decide, cell R[0-9]+, .*: found the text \"in June\", expected a date")
                .containsPattern("sheet Decide, cell O[0-9]+, Neck reset: found 0.50.*below the shortest safe hours");
        assertThat(shop.resolve("price-book/2026-11-15.csv")).doesNotExist();
    }

    @Test
    void whateverIsNoDraftIsRefusedAsSuch() throws IOException {
        byte[] drafted = Files.readAllBytes(shop.resolve("out/2026-10-31").resolve(WriteRevisionWorkbook.FILE));
        List<byte[]> wrong = new ArrayList<>(List.of(
                new byte[0],
                "repair_type;hours\r\nrefret;11,5\r\n".getBytes(java.nio.charset.StandardCharsets.UTF_8),
                packed("mimetype", "application/vnd.oasis.opendocument.spreadsheet"),
                packed("xl/workbook.xml", "<workbook/>"),
                cellReference(drafted, "ZZZZZ12"),
                cellReference(drafted, "B0"),
                cellReference(drafted, "B99999999"),
                cellReference(drafted, "12")));
        for (int part = 1; part < 8; part++) {
            wrong.add(java.util.Arrays.copyOf(drafted, drafted.length * part / 8));
        }
        for (int i = 0; i < wrong.size(); i++) {
            Files.write(draft, wrong.get(i));
            err.getBuffer().setLength(0);
            assertThat(adopt()).as(i + ": " + err).isEqualTo(65);
            assertThat(err.toString())
                    .contains("decided.xlsx", "Nothing was written.")
                    .containsAnyOf(
                            "expected the workbook price-book-revision.xlsx", "not in their place", "no decision");
        }
    }

    private static byte[] packed(String name, String text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream archive = new ZipOutputStream(bytes)) {
            archive.putNextEntry(new ZipEntry(name));
            archive.write(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        }
        return bytes.toByteArray();
    }

    /** The draft with a cell that no sheet can have. */
    private static byte[] cellReference(byte[] drafted, String reference) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipInputStream parts = new ZipInputStream(new java.io.ByteArrayInputStream(drafted));
                ZipOutputStream archive = new ZipOutputStream(bytes)) {
            for (ZipEntry part = parts.getNextEntry(); part != null; part = parts.getNextEntry()) {
                byte[] content = parts.readAllBytes();
                archive.putNextEntry(new ZipEntry(part.getName()));
                if (part.getName().startsWith("xl/worksheets/sheet")) {
                    String sheet = new String(content, java.nio.charset.StandardCharsets.UTF_8);
                    content = sheet.replaceFirst("r=\"B12\"", "r=\"" + reference + "\"")
                            .getBytes(java.nio.charset.StandardCharsets.UTF_8);
                }
                archive.write(content);
            }
        }
        return bytes.toByteArray();
    }

    @Test
    void keepingWithReasonAndDateLeavesTheBookAndIsRecorded() throws IOException {
        decide(sheet -> {
            Row row = row(sheet, "refret");
            row.getCell(DECISION).setCellValue("keep");
            row.getCell(REASON).setCellValue("new press on order");
            row.getCell(UNTIL).setCellValue(LocalDate.parse("2027-06-30"));
        });
        assertThat(adopt()).as(err.toString()).isZero();
        assertThat(shop.resolve("decisions/2026-11-15.json"))
                .content()
                .contains("new press on order", "\"until\": \"2027-06-30\"");
        assertThat(run("nightly", "--quiet")).as(err.toString()).isZero();
        assertThat(Files.readAllLines(shop.resolve("out/2026-10-31/revision.csv")))
                .filteredOn(line -> line.startsWith("refret,"))
                .singleElement()
                .asString()
                .contains("kept by you until", "new press on order");
    }

    @Test
    void aFileThatIsNoDraftIsRefusedByName() throws IOException {
        Files.writeString(draft, "not a workbook");
        assertThat(adopt()).isEqualTo(65);
        assertThat(err.toString()).contains("decided.xlsx", "saved as .xlsx");
        draft = folder.resolve("nowhere.xlsx");
        assertThat(adopt()).isEqualTo(66);
    }

    @Test
    void everyFormulaOfTheDraftGivesTheStoredValueAlsoAfterAnotherShopRate() throws IOException {
        Path drafted = shop.resolve("out/2026-10-31").resolve(WriteRevisionWorkbook.FILE);
        try (InputStream bytes = Files.newInputStream(drafted);
                XSSFWorkbook workbook = new XSSFWorkbook(bytes)) {
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            int checked = 0;
            for (Row row : workbook.getSheet("Decide")) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA) {
                        CellValue value = evaluator.evaluate(cell);
                        if (cell.getCachedFormulaResultType() == CellType.NUMERIC) {
                            assertThat(value.getNumberValue())
                                    .as(cell.getAddress() + " " + cell.getCellFormula())
                                    .isCloseTo(cell.getNumericCellValue(), within(1e-4));
                        }
                        checked++;
                    }
                }
            }
            assertThat(checked).isGreaterThan(300);
            Sheet sheet = workbook.getSheet("Decide");
            own(sheet, "refret", 100);
            sheet.getRow(3).getCell(5).setCellValue(200);
            evaluator.clearAllCachedResultValues();
            Row refret = row(sheet, "refret");
            assertThat(evaluator.evaluate(refret.getCell(NEW_HOURS)).getNumberValue())
                    .isEqualTo(100);
            assertThat(evaluator.evaluate(refret.getCell(NEW_PRICE)).getNumberValue())
                    .isEqualTo(20_000);
            assertThat(refret.getCell(HOURS).getNumericCellValue()).isGreaterThan(0);
        }
    }

    @Test
    void aDraftIsTheSameToTheByteEachTime() throws IOException {
        Path drafted = shop.resolve("out/2026-10-31").resolve(WriteRevisionWorkbook.FILE);
        byte[] first = Files.readAllBytes(drafted);
        assertThat(run("nightly", "--quiet")).isZero();
        assertThat(Files.readAllBytes(drafted)).isEqualTo(first);
    }
}
