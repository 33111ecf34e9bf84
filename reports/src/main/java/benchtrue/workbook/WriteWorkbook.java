package benchtrue.workbook;

import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import java.io.IOException;
import java.nio.file.Path;

/** Writes {@code review.xlsx}: the five answers, findings, money, the lines behind them, and notes. */
public final class WriteWorkbook implements Report {
    /** The workbook's name. */
    public static final String FILE = "review.xlsx";

    @Override
    public void write(Review review, Path folder) throws IOException {
        try (SteadyWorkbook workbook =
                new SteadyWorkbook(folder.resolve(FILE), review.ledger().asOf())) {
            fill(workbook, review);
            workbook.save();
        }
    }

    /** The answers point into findings and money, and so are filled last. */
    private static void fill(SteadyWorkbook workbook, Review review) {
        Look look = new Look(workbook);
        LinesSheet lines = new LinesSheet(review, LinesSheet.MOST_LINES);
        var answers = workbook.createSheet(AnswersSheet.NAME);
        var repairs = workbook.createSheet(RepairsSheet.NAME);
        var money = workbook.createSheet(MoneySheet.NAME);
        RepairsSheet findings = new RepairsSheet(review, lines);
        lines.write(workbook.createSheet(LinesSheet.NAME), look);
        findings.write(repairs, look);
        new MoneySheet(review).write(money, look);
        new AnswersSheet(review, findings).write(answers, look);
        new NotesSheet(review).write(workbook.createSheet(NotesSheet.NAME), look);
    }
}
