package benchtrue.workbook;

import benchtrue.nightly.Review;
import benchtrue.revision.BackTest;
import benchtrue.revision.PastMethod;
import benchtrue.revision.PastScore;
import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** How the proposal and simpler rules would have done on past jobs, raw and within the guard rails. */
final class PastJobsSheet {
    static final String NAME = "Tried on past jobs";
    private static final int HEADING_ROW = 4;
    private static final List<Heading> HEADINGS = List.of(
            Heading.text("What the hours would have been taken from", 42),
            Heading.figure("Jobs (lines, or tickets as a whole)", 12),
            Heading.figure("Jobs that fit", 10),
            Heading.figure("Hours in all, against what was worked", 14),
            Heading.figure("Hours missed a job", 10),
            Heading.figure("The same within the guard rails, rounded", 14));

    private final BackTest test;
    private final double share;

    PastJobsSheet(Review review) {
        test = review.revision().backTest();
        share = review.settings().policy().coverage();
    }

    void write(SXSSFSheet sheet, Look look) {
        Grid grid = new Grid(sheet, look);
        grid.row(1).text("Tried on past jobs", Look.Kind.TITLE);
        grid.row(2).text(test.sentence());
        Heading.write(HEADINGS, HEADING_ROW, sheet, grid);
        int row = HEADING_ROW + 1;
        for (PastMethod method : test.cutOffs().isEmpty() ? new PastMethod[0] : PastMethod.values()) {
            score(grid.row(row++), method);
        }
    }

    private void score(Grid grid, PastMethod method) {
        PastScore score = test.total(method);
        double railed = method == PastMethod.POLICY ? Double.NaN : missed(test.railedTotal(method));
        grid.text(method.words(), Look.Kind.WRAPPED)
                .number(score.jobs(), Look.Kind.COUNT)
                .number(score.coverage(), Look.Kind.SHARE)
                .number(score.hoursBias(), Look.Kind.CHANGE)
                .number(missed(score), Look.Kind.HOURS)
                .number(railed, Look.Kind.HOURS);
    }

    /** Hours too long, and hours too short in the weight that the share of jobs that should fit gives them. */
    private double missed(PastScore score) {
        return score.loss() / score.jobs() / (1 - share);
    }
}
