package benchtrue.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.format.Figures;
import benchtrue.shop.Money;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever an owner opens, the same figure stands in it, written by one rule. */
class FiguresAgreeTest {
    private static final Figures WRITTEN = Figures.of("en-US", "USD");
    /** The tables have four decimals. */
    private static final double AS_WRITTEN = 0.5001e-4;

    private static OneNight night;
    private static Outputs outputs;
    private static Workbook review;
    private static Workbook draft;

    @BeforeAll
    static void openWhatTheNightLeft() throws IOException {
        night = OneNight.onTheSample();
        outputs = new Outputs(night.results());
        review = outputs.workbook("review.xlsx");
        draft = outputs.workbook("price-book-revision.xlsx");
    }

    @AfterAll
    static void close() throws IOException {
        review.close();
        draft.close();
    }

    private static Map<String, Map<String, Cell>> repairs(Sheet sheet) {
        return Outputs.below(sheet, "In the price book as").stream()
                .collect(Collectors.toMap(
                        row -> row.get("In the price book as").getStringCellValue(), Function.identity()));
    }

    private static double number(Cell cell) {
        if (cell == null) {
            return Double.NaN;
        }
        CellType type = cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
        return type == CellType.NUMERIC ? cell.getNumericCellValue() : Double.NaN;
    }

    private static long money(Cell cell) {
        return Money.of(BigDecimal.valueOf(number(cell)));
    }

    private static void same(Map<String, String> row, String column, Cell cell) {
        String written = row.get(column);
        if (written.isEmpty()) {
            assertThat(number(cell)).as(row + " " + column).isNaN();
        } else {
            assertThat(number(cell)).as(row + " " + column).isCloseTo(Double.parseDouble(written), within(AS_WRITTEN));
        }
    }

    @Test
    void everyRepairsFiguresAreThoseOfTheTableOnThePageAndInBothWorkbooks() throws IOException {
        Map<String, Map<String, Cell>> sheet = repairs(review.getSheet("Repairs"));
        Map<String, Map<String, Cell>> decide = repairs(draft.getSheet("Decide"));
        Map<String, List<String>> page = outputs.repairsOnThePage();
        List<Map<String, String>> findings = outputs.table("findings.csv");
        assertThat(findings).hasSizeGreaterThan(25);
        assertThat(sheet).hasSameSizeAs(findings);
        for (Map<String, String> finding : findings) {
            Map<String, Cell> row = sheet.get(finding.get("repair_type"));
            same(finding, "lines", row.get("Jobs"));
            same(finding, "quoted_hours", row.get("Quoted hours against today's book"));
            same(finding, "actual_hours", row.get("Bench hours"));
            same(finding, "load_factor", row.get("Hours per quoted hour"));
            same(finding, "typical_factor", row.get("Usual job, hours per quoted hour"));
            if (finding.get("annual_shortfall").isEmpty()) {
                assertThat(finding.get("verdict")).isEqualTo("not judged: hours missing");
            } else {
                double lost = number(row.get("Hours a year beyond the quote")) * shopRate();
                assertThat(lost).isCloseTo(Double.parseDouble(finding.get("annual_shortfall")), within(AS_WRITTEN));
            }
            assertThat(row.get("Verdict").getStringCellValue()).isEqualTo(finding.get("verdict"));
            assertThat(row.get("Why").getStringCellValue()).isEqualTo(finding.get("why"));
            if (decide.containsKey(finding.get("repair_type"))) { // A retired repair is not decided on.
                same(
                        finding,
                        "load_factor",
                        decide.get(finding.get("repair_type")).get("Hours per quoted hour"));
                same(finding, "lines", decide.get(finding.get("repair_type")).get("Jobs"));
            }
            assertThat(page.get(finding.get("title")))
                    .contains(
                            finding.get("verdict"),
                            WRITTEN.count(Long.parseLong(finding.get("lines"))),
                            WRITTEN.number(number(row.get("Hours per quoted hour")), 2),
                            lostAYear(row))
                    .anyMatch(cell -> cell.startsWith(finding.get("why")));
        }
    }

    private static double shopRate() {
        return number(Outputs.named(review, "ShopRate"));
    }

    /** Too few jobs for a range leave one figure, too many hours unread none. */
    private static String lostAYear(Map<String, Cell> row) {
        if (Double.isNaN(number(row.get("Lost a year (money; minus is gained)")))) {
            return Figures.UNKNOWN;
        }
        Cell lower = row.get("lost at least (90 % sure)");
        return Double.isNaN(number(lower))
                ? "about " + WRITTEN.money(money(row.get("Lost a year (money; minus is gained)")))
                : range(lower, row.get("lost at most (90 % sure)"));
    }

    private static String range(Cell lower, Cell upper) {
        String low = WRITTEN.money(money(lower));
        String high = WRITTEN.money(money(upper));
        return low.equals(high) ? "about " + low : low + " to " + high;
    }

    @Test
    void everyProposalIsThatOfTheTableOnThePageAndInTheDraft() throws IOException {
        Map<String, Map<String, Cell>> decide = repairs(draft.getSheet("Decide"));
        Map<String, String> titles = outputs.table("findings.csv").stream()
                .collect(Collectors.toMap(row -> row.get("repair_type"), row -> row.get("title")));
        Map<String, List<String>> page = outputs.repairsOnThePage();
        List<Map<String, String>> proposals = outputs.table("revision.csv");
        assertThat(proposals).hasSizeGreaterThan(25);
        for (Map<String, String> proposal : proposals) {
            Map<String, Cell> row = decide.get(proposal.get("repair_type"));
            same(proposal, "book_hours", row.get("Hours in the book"));
            same(proposal, "proposed_hours", row.get("Proposed hours"));
            same(proposal, "proposed_labour", row.get("Price if taken"));
            same(proposal, "coverage_before", row.get("Jobs that fit today's hours"));
            assertThat(row.get("On what it stands, and why held").getStringCellValue())
                    .contains(proposal.get("basis"), proposal.get("held_because"));
            assertThat(page.get(titles.get(proposal.get("repair_type"))))
                    .contains(quote(row.get("Hours in the book")), quote(row.get("Proposed hours")))
                    .anyMatch(cell -> cell.contains(proposal.get("held_because")));
        }
    }

    private static String quote(Cell hours) {
        return WRITTEN.quote(benchtrue.shop.Hours.seconds(BigDecimal.valueOf(hours.getNumericCellValue())));
    }

    @Test
    void theLargestLossesAreOneRangeOnScreenPagePictureAndFirstSheet() throws IOException {
        Matcher told = Pattern.compile("(?m)^  [1-5]\\. (.*?): .*, losing (.*?) a year\\.$")
                .matcher(night.out());
        String page = outputs.words("review.html");
        String picture = outputs.text("charts/money-lost.svg");
        List<Map<String, Cell>> answers = Outputs.below(review.getSheet("Answers"), "at most (90 % sure)");
        int seen = 0;
        while (told.find()) {
            String range = told.group(2);
            Map<String, Cell> row = answers.get(seen++);
            assertThat(row.get("Repair").getStringCellValue()).isEqualTo(told.group(1));
            assertThat(range(row.get("Lost a year: at least (90 % sure)"), row.get("at most (90 % sure)")))
                    .isEqualTo(range);
            assertThat(page).contains(told.group(1) + " " + range);
            assertThat(picture).contains(range);
        }
        assertThat(seen).isPositive();
    }

    @Test
    void theDigestCountsAndSumsWhatTheFindingsHold() throws IOException {
        List<Map<String, Cell>> under =
                new ArrayList<>(repairs(review.getSheet("Repairs")).values());
        under.removeIf(row -> !row.get("Verdict").getStringCellValue().equals("under-quoted"));
        long least = 0;
        long most = 0;
        for (Map<String, Cell> row : under) {
            least += Money.of(BigDecimal.valueOf(number(row.get("at least (90 % sure), h")) * shopRate()));
            most += Money.of(BigDecimal.valueOf(number(row.get("at most (90 % sure), h")) * shopRate()));
        }
        assertThat(outputs.text("digest.txt"))
                .contains("Under-quoted repairs: " + under.size() + ", losing " + WRITTEN.moneyRange(least, most));
        assertThat(night.out()).contains("Losing most, of " + under.size() + " under-quoted repairs:");
    }

    @ParameterizedTest
    @CsvSource({
        "cost, BenchHourCost, Costs",
        "earned_for_an_hour_taken, BenchHourEarns, Earns",
        "break_even, BenchHourBreakEven, Must bring"
    })
    void aBenchHourIsTheSameInTheRecordOnBothSheetsAndOnThePage(String figure, String name, String words)
            throws IOException {
        BigDecimal recorded = new BigDecimal(outputs.recorded("bench_hour", figure));
        assertThat(number(Outputs.named(review, name))).isCloseTo(recorded.doubleValue(), within(AS_WRITTEN));
        assertThat(answer(name)).isCloseTo(recorded.doubleValue(), within(AS_WRITTEN));
        assertThat(outputs.words("review.html")).contains(words + " " + WRITTEN.rate(Money.of(recorded)));
    }

    @Test
    void whetherTheLastPriceChangeWorkedIsToldInTheSameWordsOnPageAndFirstSheet() throws IOException {
        Cell sentence = null;
        for (var row : review.getSheet("Answers")) {
            if (row.getCell(0) != null && row.getCell(0).toString().equals("Price book in force since")) {
                sentence = row.getCell(2);
            }
        }
        assertThat(sentence).isNotNull();
        assertThat(sentence.getStringCellValue()).startsWith("The book of ");
        assertThat(outputs.words("review.html")).contains(sentence.getStringCellValue());
    }

    /** Returns the value of the first sheet's cell that asks for a name. */
    private static double answer(String name) {
        for (var row : review.getSheet("Answers")) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.FORMULA
                        && cell.getCellFormula().contains(name + ")")) {
                    return cell.getNumericCellValue();
                }
            }
        }
        throw new AssertionError("no answer asks for " + name);
    }

    /** Columns of lines.csv, with the heading in the workbook and the balance on the page. */
    @ParameterizedTest
    @CsvSource({
        "labour_revenue, Labour revenue, 'labour billed, else quoted'",
        "parts_revenue, Parts revenue, 'parts billed, else quoted'",
        "labour_cost, Labour cost, wages and payroll on-costs",
        "parts_cost, Parts cost, parts and outside work",
        "overhead_cost, Overhead carried, overhead carried by jobs",
        "margin, Margin, ''"
    })
    void aSumOverAllLinesIsTheSameInTableWorkbookRecordAndPage(String column, String heading, String balance)
            throws IOException {
        BigDecimal sum = BigDecimal.ZERO;
        for (Map<String, String> line : outputs.table("lines.csv")) {
            sum = line.get(column).isEmpty() ? sum : sum.add(new BigDecimal(line.get(column)));
        }
        BigDecimal cents = sum.setScale(2, RoundingMode.HALF_EVEN);
        assertThat(cents).isNotZero();
        assertThat(cents(outputs.recorded("money", column))).isEqualTo(cents);
        double inWorkbook = Outputs.below(review.getSheet("Lines"), heading).stream()
                .mapToDouble(row -> number(row.get(heading)))
                .filter(Double::isFinite)
                .sum();
        assertThat(inWorkbook).isCloseTo(sum.doubleValue(), within(0.005));
        if (!balance.isEmpty()) {
            Matcher told = Pattern.compile(Pattern.quote(balance) + " [0-9,.]+ lines ([0-9,.]+)")
                    .matcher(outputs.words("review.html"));
            assertThat(told.find()).as(balance).isTrue();
            assertThat(cents(told.group(1).replace(",", ""))).isEqualTo(cents);
        }
    }

    private static BigDecimal cents(String amount) {
        return new BigDecimal(amount).setScale(2, RoundingMode.HALF_EVEN);
    }

    @Test
    void everyMonthsMarginIsThatOfTheRecord() throws IOException {
        List<Map<String, Cell>> months = Outputs.below(review.getSheet("Money"), "Labour revenue");
        Matcher month = Pattern.compile("(?s)\"month\": \"([0-9-]+)\",[^}]*?\"margin\": \"([-0-9.]+)\"")
                .matcher(outputs.text("run.json"));
        int row = 0;
        while (month.find()) {
            assertThat(months.get(row).get("Month").getStringCellValue()).isEqualTo(month.group(1));
            assertThat(number(months.get(row).get("Margin")))
                    .as(month.group(1))
                    .isCloseTo(Double.parseDouble(month.group(2)), within(AS_WRITTEN));
            row++;
        }
        assertThat(row).isGreaterThan(12);
    }
}
