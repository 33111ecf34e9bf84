package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Workbook;
import org.junit.jupiter.api.Test;

/** What to change stands in one order on the screen, in the digest, on the page and on both sheets: what is sure first. */
class OneOrderTest {
    private final OneNight night = OneNight.onTheSample();
    private final Outputs outputs = new Outputs(night.results());

    /** Returns the changing rows of the sheet on which the owner decides, each with how sure it is. */
    private List<Map<String, Cell>> drafted(String standing) throws IOException {
        try (Workbook draft = outputs.workbook("price-book-revision.xlsx")) {
            return Outputs.below(draft.getSheet("Decide"), "Sure, leans or stays").stream()
                    .filter(row ->
                            row.get("Sure, leans or stays").getStringCellValue().equals(standing))
                    .toList();
        }
    }

    private static List<String> titles(List<Map<String, Cell>> rows) {
        return rows.stream().map(row -> row.get("Repair").getStringCellValue()).toList();
    }

    private static List<String> found(String pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher told = Pattern.compile(pattern).matcher(text);
        while (told.find()) {
            found.add(told.group(1));
        }
        return found;
    }

    @Test
    void whatIsSureStandsApartFromWhatLeansAndInOneOrder() throws IOException {
        List<String> sure = titles(drafted("sure"));
        List<String> leaning = titles(drafted("leans"));
        List<String> all = new ArrayList<>(sure);
        all.addAll(leaning);
        assertThat(sure).hasSizeGreaterThan(2);
        assertThat(leaning).isNotEmpty();
        String row = "(?m)^  (\\S.*?) \\([^)]*\\): .* to .*\\.$";
        List<String> screen = new ArrayList<>(sure.subList(0, 3));
        screen.addAll(leaning.subList(0, Math.min(3, leaning.size())));
        assertThat(found(row, night.out())).isEqualTo(screen);
        assertThat(found(row, outputs.text("digest.txt"))).isEqualTo(all.subList(0, 3));
        String page = outputs.text("review.html");
        String second = page.substring(page.indexOf("id=\"answer-2\""), page.indexOf("id=\"answer-3\""));
        assertThat(found("<div class=\"row\"><a href=\"[^\"]*\">(.*?)</a>", second))
                .isEqualTo(all.subList(0, Math.min(6, all.size())));
    }

    @Test
    void everyRowTellsItsVerdictItsRangeAndTheChanceAndOnlyCertainVerdictsAreSure() throws IOException {
        for (Map<String, Cell> row : drafted("sure")) {
            assertThat(row.get("Verdict").getStringCellValue()).isIn("under-quoted", "over-quoted");
            double least = row.get("at least (90 % sure)").getNumericCellValue();
            assertThat(least).isLessThan(row.get("at most (90 % sure)").getNumericCellValue());
            assertThat(row.get("Chance that the book is too short (1 to 99 %)").getNumericCellValue())
                    .isBetween(0.01, 0.99);
        }
        for (Map<String, Cell> row : drafted("leans")) {
            assertThat(row.get("Verdict").getStringCellValue()).isNotIn("under-quoted", "over-quoted");
        }
    }

    @Test
    void eachHasItsTotal() throws IOException {
        try (Workbook draft = outputs.workbook("price-book-revision.xlsx")) {
            for (String standing : List.of("sure", "leans")) {
                double together = drafted(standing).stream()
                        .mapToDouble(row -> row.get("Money a year if taken").getNumericCellValue())
                        .sum();
                Cell total = total(draft, standing);
                assertThat(total.getNumericCellValue())
                        .isCloseTo(together, org.assertj.core.api.Assertions.within(0.01));
            }
        }
    }

    private static Cell total(Workbook draft, String standing) {
        for (var row : draft.getSheet("Decide")) {
            for (Cell cell : row) {
                if (cell.getCellType() == org.apache.poi.ss.usermodel.CellType.FORMULA
                        && cell.getCellFormula().equals("SUMIF(RowStanding,\"" + standing + "\",RowIfTaken)")) {
                    return cell;
                }
            }
        }
        throw new AssertionError("no total of " + standing);
    }
}
