package benchtrue.workbook;

import benchtrue.nightly.FileDigest;
import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import benchtrue.tables.WriteTables;
import java.io.IOException;
import java.nio.file.Path;

/** Writes {@code price-book-revision.xlsx}: the drafted price book on which the owner decides, and the jobs behind it. */
public final class WriteRevisionWorkbook implements Report {
    /** The workbook's name. */
    public static final String FILE = "price-book-revision.xlsx";

    @Override
    public void write(Review review, Path folder) throws IOException {
        String draft =
                FileDigest.of(folder, folder.resolve(WriteTables.REVISION)).sha256();
        try (SteadyWorkbook workbook =
                new SteadyWorkbook(folder.resolve(FILE), review.ledger().asOf())) {
            fill(workbook, review, draft);
            workbook.save();
        }
    }

    private static void fill(SteadyWorkbook workbook, Review review, String draft) {
        Look look = new Look(workbook);
        JobsSheet jobs = new JobsSheet(review, JobsSheet.MOST_JOBS);
        FamiliesSheet families = new FamiliesSheet(review);
        var decide = workbook.createSheet(DecideSheet.NAME);
        if (families.needed()) {
            families.write(workbook.createSheet(FamiliesSheet.NAME), look);
        }
        jobs.write(workbook.createSheet(JobsSheet.NAME), look);
        jobs.name(workbook);
        new DecideSheet(review, draft, families).write(decide, look);
        new FirstLookSheet(review).write(workbook.createSheet(FirstLookSheet.NAME), look);
        new PastJobsSheet(review).write(workbook.createSheet(PastJobsSheet.NAME), look);
        new NotesSheet(review).write(workbook.createSheet(NotesSheet.NAME), look);
    }
}
