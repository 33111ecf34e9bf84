package benchtrue.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.InventedShop;
import benchtrue.Office;
import benchtrue.ReviewOf;
import benchtrue.ShopSettings;
import benchtrue.format.Words;
import benchtrue.nightly.Review;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.ProposedChange;
import benchtrue.settings.FamilyPolicy;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.PriceBook;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.RepairType;
import benchtrue.tables.WriteTables;
import benchtrue.workbook.draft.DecideColumn;
import benchtrue.workbook.draft.DecideRow;
import benchtrue.workbook.draft.DecideSheet;
import benchtrue.workbook.draft.FamiliesSheet;
import benchtrue.workbook.draft.WriteRevisionWorkbook;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The owner tries another rate or policy in the draft: it must say what the program would say under those settings. */
class OtherInputsTest {
    private static final List<String> FAMILIES = List.of("fretwork", "setup", "electronics", "fitting");

    @TempDir
    Path folder;

    private Review review;

    @BeforeEach
    void aDraft() throws IOException {
        Review usual = InventedShop.review();
        Policy d = usual.settings().policy();
        Policy policy = new Policy(d.rule(), d.coverage(), d.largestStep(), d.priceRounding(), Policy.FallBack.NEVER);
        review = ReviewOf.ledger(
                usual.ledger(), with(usual.settings(), usual.settings().shopRate(), policy));
        Files.writeString(folder.resolve(WriteTables.REVISION), "repair_type\n");
        new WriteRevisionWorkbook().write(review, folder);
    }

    /** Makes the draft again for a shop where fretwork has a rate of its own and setups only have to pay for themselves. */
    private void familiesWithInputsOfTheirOwn() throws IOException {
        Policy d = review.settings().policy();
        List<FamilyPolicy> own = List.of(
                new FamilyPolicy(
                        "fretwork", Optional.empty(), OptionalDouble.of(0.75), 120 * Money.UNIT, 5 * Money.UNIT, 1),
                new FamilyPolicy(
                        "setup",
                        Optional.of(Policy.Rule.BREAK_EVEN),
                        OptionalDouble.empty(),
                        Absent.AMOUNT,
                        Absent.AMOUNT,
                        5));
        Policy policy =
                new Policy(d.rule(), d.coverage(), d.largestStep(), d.priceRounding(), Policy.FallBack.NEVER, own);
        Settings settings = with(review.settings(), review.settings().shopRate(), policy);
        review = ReviewOf.ledger(inFamilies(review.ledger()), settings);
        new WriteRevisionWorkbook().write(review, folder);
    }

    /** Deals the repair types to four families. */
    private static Ledger inFamilies(Ledger ledger) {
        PriceBooks books = new PriceBooks(ledger.books().versions().stream()
                .map(version -> new PriceBook(
                        version.effective(),
                        version.types().values().stream()
                                .collect(Collectors.toMap(RepairType::repairType, OtherInputsTest::inFamily))))
                .toList());
        return new Ledger(
                ledger.asOf(),
                ledger.repairTypes(),
                ledger.technicians(),
                ledger.parts(),
                books,
                ledger.tickets(),
                ledger.lines(),
                ledger.time(),
                ledger.partUses(),
                ledger.wages(),
                ledger.paidHours(),
                ledger.overheads(),
                ledger.waits(),
                ledger.completeness(),
                ledger.missing());
    }

    private static RepairType inFamily(RepairType type) {
        String key = type.repairType();
        return new RepairType(
                key,
                type.title(),
                FAMILIES.get((key.charAt(key.length() - 1) - '0') % FAMILIES.size()),
                type.bookSeconds(),
                type.bookLabour(),
                type.leastSeconds(),
                type.hazards(),
                type.leastLabour(),
                type.freeWeeks());
    }

    /** Tries other inputs for some families, none for others. */
    private static Settings randomFamilies(SplittableRandom random, Settings shop) {
        List<FamilyPolicy> own = FAMILIES.stream()
                .sorted()
                .filter(family -> random.nextInt(3) > 0)
                .map(family -> new FamilyPolicy(
                        family,
                        random.nextBoolean() ? Optional.empty() : Optional.of(Policy.Rule.values()[random.nextInt(3)]),
                        random.nextBoolean()
                                ? OptionalDouble.empty()
                                : OptionalDouble.of((40 + random.nextInt(50)) / 100.0),
                        random.nextBoolean() ? Absent.AMOUNT : Money.UNIT * (60 + random.nextInt(90)),
                        random.nextBoolean() ? Absent.AMOUNT : Money.UNIT * (1 + random.nextInt(5)),
                        1))
                .toList();
        Policy d = shop.policy();
        return with(
                shop,
                shop.shopRate(),
                new Policy(d.rule(), d.coverage(), d.largestStep(), d.priceRounding(), d.fallBack(), own));
    }

    private static void typeFamilies(XSSFWorkbook workbook, Settings settings) {
        Sheet sheet = workbook.getSheet(FamiliesSheet.NAME);
        for (int number = FamiliesSheet.FIRST_ROW - 1; number <= sheet.getLastRowNum(); number++) {
            Row row = sheet.getRow(number);
            for (int column = FamiliesSheet.OWN_RATE; column <= FamiliesSheet.OWN_STEP; column++) {
                row.getCell(column).setBlank();
            }
            String family = row.getCell(0).getStringCellValue();
            settings.policy().families().stream()
                    .filter(own -> own.family().equals(family))
                    .forEach(own -> typeFamily(row, own));
        }
    }

    private static void typeFamily(Row row, FamilyPolicy own) {
        if (Absent.has(own.rate())) {
            row.getCell(FamiliesSheet.OWN_RATE).setCellValue(Money.units(own.rate()));
        }
        own.coverage()
                .ifPresent(share -> row.getCell(FamiliesSheet.OWN_COVERAGE).setCellValue(share));
        own.rule().ifPresent(rule -> row.getCell(FamiliesSheet.OWN_RULE).setCellValue(Words.of(rule)));
        if (Absent.has(own.priceRounding())) {
            row.getCell(FamiliesSheet.OWN_STEP).setCellValue(Money.units(own.priceRounding()));
        }
    }

    private static Settings with(Settings d, long shopRate, Policy policy) {
        return new ShopSettings(d).shopRate(shopRate).policy(policy).build();
    }

    /** Which method did best on past jobs is not worked out again by the sheet. */
    private static Settings random(SplittableRandom random, Settings settings) {
        Policy.Rule rule = Policy.Rule.values()[random.nextInt(3)];
        double coverage = (40 + random.nextInt(50)) / 100.0;
        Policy policy = new Policy(
                rule,
                coverage,
                settings.policy().largestStep(),
                Money.UNIT * (1 + random.nextInt(5)),
                Policy.FallBack.NEVER);
        return with(settings, Money.UNIT * (60 + random.nextInt(90)), policy);
    }

    /** Types the settings into the named cells, as the owner would. */
    private Path typed(Settings settings) throws IOException {
        Path typed = folder.resolve("typed.xlsx");
        try (XSSFWorkbook workbook = open(folder.resolve(WriteRevisionWorkbook.FILE));
                OutputStream saved = Files.newOutputStream(typed)) {
            type(workbook, settings);
            workbook.write(saved);
        }
        return typed;
    }

    private static void type(XSSFWorkbook workbook, Settings settings) {
        named(workbook, "ShopRate").setCellValue(Money.units(settings.shopRate()));
        named(workbook, "CoveragePolicy").setCellValue(settings.policy().coverage());
        // A text cell must be emptied first, or the library leaves the old text beside the new one.
        named(workbook, "PolicyRule").setBlank();
        named(workbook, "PolicyRule").setCellValue(DecideRow.rule(settings.policy()));
        named(workbook, "PriceStep").setCellValue(Money.units(settings.policy().priceRounding()));
        if (workbook.getSheet(FamiliesSheet.NAME) != null) {
            typeFamilies(workbook, settings);
        }
    }

    private static org.apache.poi.ss.usermodel.Cell named(XSSFWorkbook workbook, String name) {
        CellReference place = new CellReference(workbook.getName(name).getRefersToFormula());
        return workbook.getSheet(place.getSheetName()).getRow(place.getRow()).getCell(place.getCol());
    }

    private static XSSFWorkbook open(Path file) throws IOException {
        try (InputStream bytes = Files.newInputStream(file)) {
            return new XSSFWorkbook(bytes);
        }
    }

    /** Compares hours, price and money a year of every row with what the program proposes; returns how many rows. */
    private int compare(XSSFWorkbook workbook, Settings settings, String at) {
        Ledger ledger = review.ledger();
        Map<String, ProposedChange> changes = ReviewOf.ledger(ledger, settings).revision().changes().stream()
                .collect(Collectors.toMap(
                        change -> ledger.repairTypes().name(change.repairType()), Function.identity()));
        Sheet sheet = workbook.getSheet(DecideSheet.NAME);
        int rows = 0;
        for (int number = DecideSheet.FIRST_ROW - 1; number <= sheet.getLastRowNum(); number++) {
            Row row = sheet.getRow(number);
            String key = row.getCell(DecideColumn.KEY.ordinal()).getStringCellValue();
            ProposedChange change = changes.get(key);
            String place = at + " " + key;
            assertThat(number(row, DecideColumn.PROPOSED))
                    .as(place + " " + settings.policy() + " " + change)
                    .isEqualTo(Hours.of(change.proposedSeconds()), within(1e-6));
            assertThat(number(row, DecideColumn.TAKE_PRICE))
                    .as(place)
                    .isEqualTo(Money.units(change.proposedLabour()), within(1e-6));
            assertThat(number(row, DecideColumn.TAKE_EFFECT))
                    .as(place)
                    .isEqualTo(Money.units(change.annualEffect()), within(1e-3));
            safe(row, key, place);
            rows++;
        }
        return rows;
    }

    /** Neither hazardous work nor the shortest safe hours are ever cut. */
    private void safe(Row row, String key, String place) {
        RepairType type =
                review.ledger().books().type(key, review.ledger().asOf()).orElseThrow();
        double proposed = number(row, DecideColumn.PROPOSED);
        if (!type.hazards().isEmpty()) {
            assertThat(proposed).as(place).isGreaterThanOrEqualTo(number(row, DecideColumn.HOURS));
        }
        if (Absent.has(type.leastSeconds())) {
            assertThat(proposed).as(place).isGreaterThanOrEqualTo(Hours.of(type.leastSeconds()) - 1e-9);
        }
    }

    private static double number(Row row, DecideColumn column) {
        return row.getCell(column.ordinal()).getNumericCellValue();
    }

    @Test
    void anotherRateOrPolicyGivesWhatTheProgramWouldPropose() throws IOException {
        for (long seed = 1; seed <= 60; seed++) {
            Settings settings = random(new SplittableRandom(seed), review.settings());
            try (XSSFWorkbook workbook = open(folder.resolve(WriteRevisionWorkbook.FILE))) {
                type(workbook, settings);
                workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
                assertThat(compare(workbook, settings, "seed " + seed)).isEqualTo(InventedShop.TITLES.size());
            }
        }
    }

    @Test
    void aShopWithoutFamiliesOfTheirOwnHasNoSheetForThem() throws IOException {
        try (XSSFWorkbook workbook = open(folder.resolve(WriteRevisionWorkbook.FILE))) {
            assertThat(workbook.getSheet(FamiliesSheet.NAME)).isNull();
        }
    }

    @Test
    void everyStoredValueOfADraftWithFamiliesIsWhatItsFormulaGives() throws IOException {
        familiesWithInputsOfTheirOwn();
        try (XSSFWorkbook stored = open(folder.resolve(WriteRevisionWorkbook.FILE));
                XSSFWorkbook again = open(folder.resolve(WriteRevisionWorkbook.FILE))) {
            again.getCreationHelper().createFormulaEvaluator().evaluateAll();
            assertThat(sameFormulas(stored, again)).isGreaterThan(100);
            assertThat(compare(stored, review.settings(), "as drafted")).isEqualTo(InventedShop.TITLES.size());
        }
    }

    private static int sameFormulas(XSSFWorkbook stored, XSSFWorkbook again) {
        int checked = 0;
        for (Sheet sheet : stored) {
            for (Cell cell : Formulas.formulas(sheet)) {
                Formulas.same(
                        cell,
                        again.getSheet(sheet.getSheetName())
                                .getRow(cell.getRowIndex())
                                .getCell(cell.getColumnIndex()));
                checked++;
            }
        }
        return checked;
    }

    @Test
    void aFamilyFollowsItsOwnInputsAndTheShopsWhereItsCellIsEmpty() throws IOException {
        familiesWithInputsOfTheirOwn();
        for (long seed = 101; seed <= 140; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Settings settings = randomFamilies(random, random(random, review.settings()));
            try (XSSFWorkbook workbook = open(folder.resolve(WriteRevisionWorkbook.FILE))) {
                type(workbook, settings);
                workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
                assertThat(compare(workbook, settings, "seed " + seed)).isEqualTo(InventedShop.TITLES.size());
            }
        }
    }

    @Test
    @Tag("office")
    void familiesDoSoInASpreadsheetProgramOfAnotherMake() throws Exception {
        familiesWithInputsOfTheirOwn();
        Path drafted = folder.resolve(WriteRevisionWorkbook.FILE);
        Path same =
                new Office(folder.resolve("office-same")).recalculate(drafted).resolve(WriteRevisionWorkbook.FILE);
        try (XSSFWorkbook stored = open(drafted);
                XSSFWorkbook again = open(same)) {
            assertThat(sameFormulas(stored, again)).isGreaterThan(100);
        }
        for (long seed = 121; seed <= 123; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Settings settings = randomFamilies(random, random(random, review.settings()));
            Path recalculated = new Office(folder.resolve("office-" + seed))
                    .recalculate(typed(settings))
                    .resolve("typed.xlsx");
            try (XSSFWorkbook workbook = open(recalculated)) {
                assertThat(compare(workbook, settings, "seed " + seed)).isEqualTo(InventedShop.TITLES.size());
            }
        }
    }

    @Test
    @Tag("office")
    void soItDoesInASpreadsheetProgramOfAnotherMake() throws Exception {
        for (long seed = 21; seed <= 23; seed++) {
            Settings settings = random(new SplittableRandom(seed), review.settings());
            Path typed = typed(settings);
            Path recalculated = new Office(folder.resolve("office-" + seed))
                    .recalculate(typed)
                    .resolve("typed.xlsx");
            try (XSSFWorkbook workbook = open(recalculated)) {
                assertThat(compare(workbook, settings, "seed " + seed)).isEqualTo(InventedShop.TITLES.size());
            }
        }
    }
}
