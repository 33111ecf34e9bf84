package benchtrue.workbook;

import benchtrue.nightly.FileDigest;
import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import benchtrue.tables.WriteTables;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes {@code price-book-revision.xlsx}: the drafted price book on which the owner decides, and the jobs behind it. */
public final class WriteRevisionWorkbook implements Report {
    /** The workbook's name. */
    public static final String FILE = "price-book-revision.xlsx";

    private static final int ROWS_IN_MEMORY = 100;

    @Override
    public void write(Review review, Path folder) throws IOException {
        try (XSSFWorkbook whole = new XSSFWorkbook();
                SXSSFWorkbook streamed = fill(
                        whole,
                        review,
                        FileDigest.of(folder, folder.resolve(WriteTables.REVISION))
                                .sha256())) {
            FixedArchive.date(whole, review.ledger().asOf());
            FixedArchive.write(streamed, folder.resolve(FILE));
        }
    }

    private static SXSSFWorkbook fill(XSSFWorkbook whole, Review review, String draft) {
        Look look = new Look(whole);
        JobsSheet jobs = new JobsSheet(review);
        var decide = whole.createSheet(DecideSheet.NAME);
        whole.createSheet(JobsSheet.NAME);
        jobs.name(whole);
        new DecideSheet(review, draft).write(decide, look);
        new NotesSheet(review).write(whole.createSheet(NotesSheet.NAME), look);
        SXSSFWorkbook streamed = new SXSSFWorkbook(whole, ROWS_IN_MEMORY);
        jobs.write(streamed.getSheet(JobsSheet.NAME), look);
        return streamed;
    }
}
