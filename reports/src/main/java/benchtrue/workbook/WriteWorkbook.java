package benchtrue.workbook;

import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes {@code review.xlsx}: findings, the lines behind them, and notes on method. */
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

    /** Only the sheet of lines can be long, so only it is streamed; formulas elsewhere are parsed as they are set. */
    private static SXSSFWorkbook fill(XSSFWorkbook whole, Review review) {
        Look look = new Look(whole);
        LinesSheet lines = new LinesSheet(review);
        var repairs = whole.createSheet(RepairsSheet.NAME);
        whole.createSheet(LinesSheet.NAME);
        new RepairsSheet(review, lines).write(repairs, look);
        new NotesSheet(review).write(whole.createSheet(NotesSheet.NAME), look);
        SXSSFWorkbook streamed = new SXSSFWorkbook(whole, ROWS_IN_MEMORY);
        lines.write(streamed.getSheet(LinesSheet.NAME), look);
        return streamed;
    }
}
