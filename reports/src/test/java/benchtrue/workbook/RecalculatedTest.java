package benchtrue.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.Office;
import benchtrue.ReviewOf;
import benchtrue.ShopBuilder;
import benchtrue.nightly.Review;
import benchtrue.settings.ReadSettings;
import benchtrue.settings.Settings;
import benchtrue.shop.CostBehaviour;
import benchtrue.tables.WriteTables;
import benchtrue.workbook.draft.WriteRevisionWorkbook;
import benchtrue.workbook.review.MoneySheet;
import benchtrue.workbook.review.RepairsSheet;
import benchtrue.workbook.review.WriteWorkbook;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Another spreadsheet program finds what is stored, and after an input was changed what Java computes for it. */
@Tag("office")
class RecalculatedTest {
    private static final String REVIEW = WriteWorkbook.FILE;
    private static final String DRAFT = WriteRevisionWorkbook.FILE;

    @TempDir
    Path folder;

    private static ShopBuilder shop() {
        ShopBuilder shop = new ShopBuilder()
                .type("setup", 1.5)
                .type("refret", 12)
                .type("nut", 1)
                .type("crack", 3)
                .type("seldom", 2)
                .wage("ana", 30, "2020-01-01")
                .paid("ana", "2026-01", 160)
                .paid("ana", "2026-02", 400)
                .overhead("2026-01", "rent", 2_000, CostBehaviour.FIXED)
                .overhead("2026-02", "rent", 2_200, CostBehaviour.FIXED);
        for (int i = 0; i < 12; i++) {
            String opened = i < 5 ? "2026-01-05" : "2026-02-05";
            shop.ticket("T" + (100 + i))
                    .opened(opened)
                    .line("refret", 12)
                    .line("setup", 1.5)
                    .whole("ana", 18 + i % 4);
            shop.ticket("R" + (100 + i)).opened(opened).line("refret", 12).logged("ana", "1", 17 + i % 4);
            shop.ticket("S" + (100 + i)).opened(opened).line("setup", 1.5).logged("ana", "1", 1 + i % 3 * 0.25);
            shop.ticket("N" + (100 + i)).opened(opened).line("nut", 1).logged("ana", "1", 1.25 + i % 4 * 0.25);
            shop.ticket("C" + (100 + i)).opened(opened).line("crack", 3).logged("ana", "1", 3 + i % 5 * 0.5);
        }
        return shop.ticket("X1").opened("2026-01-05").line("seldom", 2).logged("ana", "1", 5);
    }

    private Settings settings(String... lines) throws IOException {
        Path shop = Files.createDirectories(folder.resolve("settings"));
        Files.writeString(shop.resolve("shop.toml"), String.join("\n", lines));
        return new ReadSettings().read(shop);
    }

    private Path write(String name, Settings settings) throws IOException {
        Path written = Files.createDirectories(folder.resolve(name));
        Review review = ReviewOf.ledger(shop().build(), settings);
        new WriteWorkbook().write(review, written);
        Files.writeString(written.resolve(WriteTables.REVISION), "repair_type\n");
        new WriteRevisionWorkbook().write(review, written);
        return written;
    }

    private Office office() throws IOException {
        return new Office(folder.resolve("office"));
    }

    @Test
    void anotherProgramFindsTheStoredValueOfEveryFormula() throws Exception {
        Path written = write("written", Settings.DEFAULTS);
        Path recalculated = office().recalculate(written.resolve(REVIEW), written.resolve(DRAFT));
        assertThat(compare(REVIEW, written, recalculated)).isGreaterThan(200);
        assertThat(compare(DRAFT, written, recalculated)).isGreaterThan(60);
    }

    /** Compares every formula's value and returns how many there were. */
    private static int compare(String file, Path written, Path recalculated) throws IOException {
        int formulas = 0;
        try (XSSFWorkbook ours = Formulas.open(written.resolve(file));
                XSSFWorkbook theirs = Formulas.open(recalculated.resolve(file))) {
            for (Sheet sheet : ours) {
                for (Cell cell : Formulas.formulas(sheet)) {
                    Formulas.same(cell, at(theirs, cell));
                    formulas++;
                }
            }
        }
        return formulas;
    }

    private static Cell at(XSSFWorkbook workbook, Cell place) {
        Row row = workbook.getSheet(place.getSheet().getSheetName()).getRow(place.getRowIndex());
        return row == null ? null : row.getCell(place.getColumnIndex());
    }

    @Test
    void otherRatesAndBoundsGiveTheMoneyAndVerdictsThatTheProgramGivesForThem() throws Exception {
        Path before = write("before", Settings.DEFAULTS);
        Path expected = write(
                "expected", settings("shop_rate = 130", "materiality = 20000", "[money]", "target_margin = 0.35"));
        change(before.resolve(REVIEW), Map.of("ShopRate", 130.0, "BigEnough", 20_000.0, "TargetMargin", 0.35));
        Path recalculated = office().recalculate(before.resolve(REVIEW));
        int changedVerdicts = 0;
        try (XSSFWorkbook ours = Formulas.open(expected.resolve(REVIEW));
                XSSFWorkbook theirs = Formulas.open(recalculated.resolve(REVIEW));
                XSSFWorkbook old = Formulas.open(before.resolve(REVIEW))) {
            for (String sheet : List.of(RepairsSheet.NAME, MoneySheet.NAME)) {
                for (Cell cell : Formulas.formulas(ours.getSheet(sheet))) {
                    Formulas.same(cell, at(theirs, cell));
                    changedVerdicts += differs(cell, at(old, cell)) ? 1 : 0;
                }
            }
        }
        assertThat(changedVerdicts).as("verdicts that the bound changes").isPositive();
    }

    private static boolean differs(Cell now, Cell before) {
        return now.getCachedFormulaResultType() == org.apache.poi.ss.usermodel.CellType.STRING
                && !now.getStringCellValue().equals(before.getStringCellValue());
    }

    private static void change(Path file, Map<String, Double> inputs) throws IOException {
        try (XSSFWorkbook workbook = Formulas.open(file)) {
            inputs.forEach((name, value) -> {
                CellReference place = new CellReference(workbook.getName(name).getRefersToFormula());
                Row row = workbook.getSheet(place.getSheetName()).getRow(place.getRow());
                row.getCell(place.getCol()).setCellValue(value);
            });
            try (OutputStream bytes = Files.newOutputStream(file)) {
                workbook.write(bytes);
            }
        }
    }
}
