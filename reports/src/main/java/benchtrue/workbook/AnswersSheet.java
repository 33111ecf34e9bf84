package benchtrue.workbook;

import benchtrue.costing.LoggedShare;
import benchtrue.nightly.Review;
import benchtrue.shop.Figures;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** The first sheet: the five answers, with figures that follow the sheets behind them. */
final class AnswersSheet {
    static final String NAME = "Answers";

    private final Review review;
    private final RepairsSheet repairs;
    private final Figures figures;

    AnswersSheet(Review review, RepairsSheet repairs) {
        this.review = review;
        this.repairs = repairs;
        figures = review.settings().figures();
    }

    void write(SXSSFSheet sheet, Look look) {
        Flow flow = new Flow(sheet, look, 32, 14, 12, 12, 12, 12, 12, 60);
        flow.title("Bench review, " + figures.day(review.ledger().asOf()) + ": the five answers");
        flow.sentence("Money is in " + review.settings().currency()
                + ". An empty cell is not known. Statistics from the shop's own records, for an owner's judgement.");
        logged(flow);
        flow.skip(1);
        new AnswerLosses(review, repairs).write(flow);
        flow.skip(1);
        new AnswerChanges(review).write(flow);
        flow.skip(1);
        new AnswerGifts(review, figures).write(flow);
        flow.skip(1);
        new AnswerCalls(review).write(flow);
        flow.skip(1);
        new AnswerBenchHour(review, figures).write(flow);
        flow.finish(1);
    }

    /** Too little paid time in the log is read before all else. */
    private void logged(Flow flow) {
        LoggedShare logged = review.costs().shop().loggedShare();
        if (logged.opensTheReview()) {
            flow.sentence("Only " + figures.percent(logged.share()) + " of the hours paid reached the log ("
                    + figures.percent(logged.least()) + " is the least): every repair looks cheaper here than it is.");
        }
    }
}
