package benchtrue.workbook.draft;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ReviewOf;
import benchtrue.ShopBuilder;
import benchtrue.nightly.Review;
import benchtrue.tables.WriteTables;
import benchtrue.workbook.draft.WriteRevisionWorkbook.PastJobsSheet;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the first quote should ask for, and how proposals did on past jobs, stand beside the draft. */
class FirstLookSheetTest {
    @TempDir
    Path folder;

    /** A refret or a setup a week; on every third refret the bench finds that the board is uneven; bindings take a fifth more. */
    private static ShopBuilder shop() {
        ShopBuilder shop = new ShopBuilder().type("refret", 10).type("setup", 2).type("plane-board", 3);
        for (int week = 0; week < 96; week++) {
            LocalDate opened = LocalDate.of(2024, 12, 30).plusWeeks(week);
            boolean bound = week % 4 < 2;
            shop.ticket("T" + (100 + week)).opened(opened.toString());
            shop.of("guitar", "", bound ? new String[] {"bound-board"} : new String[0]);
            double scatter = 0.9 + week * 7 % 10 * 0.02;
            double hours = StrictMath.rint(1000 * scatter * (bound ? 1.2 : 1)) / 1000;
            if (week % 2 == 0) {
                shop.line("refret", 10).logged("ada", "1", 13 * hours);
                if (week % 6 == 0) {
                    shop.line("plane-board", 3).foundOn(opened.plusDays(3).toString());
                    shop.logged("ada", "2", 3 * hours);
                }
            } else {
                shop.line("setup", 2).logged("ada", "1", 2 * hours);
            }
        }
        return shop;
    }

    private String sheet(String name) throws IOException {
        return sheet(name, shop());
    }

    private String sheet(String name, ShopBuilder shop) throws IOException {
        Review review = ReviewOf.shop(shop);
        Files.writeString(folder.resolve(WriteTables.REVISION), "repair_type\n");
        new WriteRevisionWorkbook().write(review, folder);
        StringBuilder words = new StringBuilder();
        try (InputStream bytes = Files.newInputStream(folder.resolve(WriteRevisionWorkbook.FILE));
                XSSFWorkbook workbook = new XSSFWorkbook(bytes)) {
            for (Row row : workbook.getSheet(name)) {
                for (Cell cell : row) {
                    words.append(
                                    cell.getCellType() == CellType.NUMERIC
                                            ? Double.toString(cell.getNumericCellValue())
                                            : cell.getStringCellValue())
                            .append(' ');
                }
                words.append('\n');
            }
        }
        return words.toString();
    }

    @Test
    void theFirstQuoteIsToldWhatTheBenchKeepsFinding() throws IOException {
        assertThat(sheet(FirstLookSheet.NAME))
                .contains("With this repair, one in 3 also needed plane board: 16 of 48 tickets (90 % sure: ");
    }

    /** Four of a hundred setups turn out to need a fret levelled, and nothing else ever does. */
    @Test
    void whatIsFoundOnFewerThanOneTicketInTenIsCountedButNotListed() throws IOException {
        ShopBuilder shop = new ShopBuilder().type("setup", 2).type("refret", 10).type("level-fret", 1);
        for (int day = 0; day < 300; day++) {
            LocalDate opened = LocalDate.of(2025, 12, 1).plusDays(day);
            boolean setup = day % 3 == 0;
            shop.ticket("T" + (100 + day)).opened(opened.toString()).line(setup ? "setup" : "refret", setup ? 2 : 10);
            shop.logged("ada", "1", setup ? 2 : 10);
            if (setup && day % 75 == 0) {
                shop.line("level-fret", 1).foundOn(opened.plusDays(2).toString());
                shop.logged("ada", "2", 1);
            }
        }
        assertThat(sheet(FirstLookSheet.NAME, shop))
                .doesNotContain("With this repair")
                .contains("Left out: 1 pair of repairs", "on fewer than one ticket in 10.");
    }

    @Test
    void aTraitThatSurelyTakesLongerIsOfferedAsALineOfItsOwn() throws IOException {
        assertThat(sheet(FirstLookSheet.NAME))
                .contains("bound board fretwork jobs with it took longer by", ": a line of ");
    }

    @Test
    void everyMethodThatWasTriedStandsWithItsFigures() throws IOException {
        assertThat(sheet(PastJobsSheet.NAME))
                .contains(
                        "Tried on ", "the proposal ", "keeping the book ", "the plain average of the last 12 months ");
    }
}
