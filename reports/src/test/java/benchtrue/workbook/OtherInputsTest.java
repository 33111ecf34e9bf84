package benchtrue.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.InventedShop;
import benchtrue.Office;
import benchtrue.ReviewOf;
import benchtrue.nightly.Review;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.ProposedChange;
import benchtrue.settings.Policy;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.RepairType;
import benchtrue.tables.WriteTables;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Collectors;
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

    private static Settings with(Settings d, long shopRate, Policy policy) {
        return new Settings(
                d.currency(),
                d.zone(),
                d.locale(),
                shopRate,
                d.burden(),
                d.tolerance(),
                d.materiality(),
                d.falseDiscovery(),
                d.resamples(),
                policy,
                d.people(),
                d.wallCopy(),
                d.seed());
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
