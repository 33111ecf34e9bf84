package benchtrue.workbook;

import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes {@code review.xlsx}: the five answers, findings, money, the lines behind them, and notes. */
public final class WriteWorkbook implements Report {
    private static final int ROWS_IN_MEMORY = 100;

    @Override
    public void write(Review review, Path folder) throws IOException {
        try (XSSFWorkbook whole = new XSSFWorkbook();
                SXSSFWorkbook streamed = fill(whole, review)) {
            FixedArchive.date(whole, review.ledger().asOf());
            FixedArchive.write(streamed, folder.resolve("review.xlsx"));
        }
    }

    /** The answers point into findings and money, and so are filled last. Only the sheet of lines can be long, so only it is streamed; formulas elsewhere are parsed as they are set. */
    private static SXSSFWorkbook fill(XSSFWorkbook whole, Review review) {
        Look look = new Look(whole);
        LinesSheet lines = new LinesSheet(review);
        var answers = whole.createSheet(AnswersSheet.NAME);
        var repairs = whole.createSheet(RepairsSheet.NAME);
        var money = whole.createSheet(MoneySheet.NAME);
        whole.createSheet(LinesSheet.NAME);
        RepairsSheet findings = new RepairsSheet(review, lines);
        findings.write(repairs, look);
        new MoneySheet(review).write(money, look);
        new AnswersSheet(review, findings).write(answers, look);
        new NotesSheet(review).write(whole.createSheet(NotesSheet.NAME), look);
        SXSSFWorkbook streamed = new SXSSFWorkbook(whole, ROWS_IN_MEMORY);
        lines.write(streamed.getSheet(LinesSheet.NAME), look);
        return streamed;
    }
}
