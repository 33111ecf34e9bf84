package benchtrue.workbook.review;

import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import benchtrue.nightly.StandingAnswer;
import java.io.IOException;
import java.nio.file.Path;

/** Writes {@code breakdowns.xlsx}, a sheet for each of the owner's standing questions; nothing where there is none. */
public final class WriteBreakdowns implements Report {
    private static final String FILE = "breakdowns.xlsx";

    @Override
    public void write(Review review, Path folder) throws IOException {
        if (!review.breakdowns().isEmpty()) {
            BreakdownSheet.write(
                    review.breakdowns().stream().map(StandingAnswer::answer).toList(),
                    review.settings().figures(),
                    review.ledger().asOf(),
                    folder.resolve(FILE));
        }
    }
}
