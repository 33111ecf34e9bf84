package benchtrue.workbook.review;

import benchtrue.costing.Gift;
import benchtrue.costing.LoggedShare;
import benchtrue.format.Figures;
import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.NotesSheet;
import benchtrue.workbook.sheet.RowFlow;
import benchtrue.workbook.sheet.SteadyWorkbook;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Writes {@code review.xlsx}: the five answers, findings, money, open tickets, the lines behind them, and notes. */
public final class WriteWorkbook implements Report {
    /** The workbook's name. */
    public static final String FILE = "review.xlsx";

    private static final int NEWEST_MONTHS = 24;

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
        CellStyles look = new CellStyles(workbook);
        LinesSheet lines = new LinesSheet(review, LinesSheet.MOST_LINES);
        var answers = workbook.createSheet(AnswersSheet.NAME);
        var repairs = workbook.createSheet(RepairsSheet.NAME);
        var money = workbook.createSheet(MoneySheet.NAME);
        var open = workbook.createSheet(OpenTicketsSheet.NAME);
        var weeks = workbook.createSheet(WeeksSheet.NAME);
        RepairsSheet findings = new RepairsSheet(review, lines);
        lines.write(workbook.createSheet(LinesSheet.NAME), look);
        for (CrossSheet.Across across :
                List.of(CrossSheet.Across.months(review, NEWEST_MONTHS), CrossSheet.Across.classes(review))) {
            new CrossSheet(review, lines, across).write(workbook.createSheet(across.sheet()), look);
        }
        if (!review.findings().restorations().isEmpty()) {
            RestorationsSheet.write(
                    review.findings().restorations(), workbook.createSheet(RestorationsSheet.NAME), look);
        }
        if (!review.findings().writers().isEmpty()) {
            WritersSheet.write(review.findings().writers(), workbook.createSheet(WritersSheet.NAME), look);
        }
        findings.write(repairs, look);
        new MoneySheet(review).write(money, look);
        new OpenTicketsSheet(review).write(open, look);
        new WeeksSheet(review).write(weeks, look);
        new AnswersSheet(review, findings).write(answers, look);
        new NotesSheet(review).write(workbook.createSheet(NotesSheet.NAME), look);
    }

    /** The first sheet: the five answers, with figures that follow the sheets behind them. */
    static final class AnswersSheet {
        static final String NAME = "Answers";

        private final Review review;
        private final RepairsSheet repairs;
        private final Figures figures;

        AnswersSheet(Review review, RepairsSheet repairs) {
            this.review = review;
            this.repairs = repairs;
            figures = review.settings().figures();
        }

        void write(SXSSFSheet sheet, CellStyles look) {
            RowFlow flow = new RowFlow(sheet, look, 32, 14, 12, 12, 12, 12, 12, 60);
            flow.title("Bench review, " + figures.day(review.ledger().asOf()) + ": the five answers");
            flow.sentence(
                    "Money is in " + review.settings().currency()
                            + ". An empty cell is not known. Statistics from the shop's own records, for an owner's judgement.");
            review.answers().notRead().ifPresent(flow::sentence);
            review.answers().allowedFor().forEach(flow::sentence);
            logged(flow);
            flow.skip(1);
            new AnswerLosses(review, repairs).write(flow);
            flow.skip(1);
            new AnswerChanges(review).write(flow);
            flow.skip(1);
            new AnswerGifts(review, figures).write(flow);
            flow.skip(1);
            new AnswerCalls(review, figures).write(flow);
            flow.skip(1);
            new AnswerBenchHour(review, figures).write(flow);
            flow.finish(1);
        }

        /** Too little paid time in the log is read before all else. */
        private void logged(RowFlow flow) {
            LoggedShare logged = review.costs().shop().loggedShare();
            if (logged.opensTheReview()) {
                flow.sentence("Only " + figures.percent(logged.share()) + " of the hours paid reached the log ("
                        + figures.percent(logged.least())
                        + " is the least): every repair looks cheaper here than it is.");
            }
        }
    }

    /** Third answer: what was given away in the year up to the as-of date, and to whom. */
    static final class AnswerGifts {
        private final Review review;
        private final Figures figures;

        AnswerGifts(Review review, Figures figures) {
            this.review = review;
            this.figures = figures;
        }

        void write(RowFlow flow) {
            List<Gift> gifts = review.answers().given();
            String span = "In the year up to " + figures.day(review.ledger().asOf());
            flow.title("3. What was given away, and to whom");
            if (gifts.isEmpty()) {
                flow.sentence(span + " nothing is recorded as given away.");
                return;
            }
            flow.headings(List.of("What", "Who pays the ticket", "Times", "Bench hours", "Worth"), 0, 1);
            int first = flow.row() + 1;
            gifts.forEach(gift -> flow.next()
                    .text(gift.what(), CellStyles.Kind.WRAPPED)
                    .text(gift.toWhom().replace('-', ' '))
                    .number(gift.times(), CellStyles.Kind.COUNT)
                    .number(gift.seconds() > 0 ? Amounts.hours(gift.seconds()) : Double.NaN, CellStyles.Kind.HOURS)
                    .number(Amounts.money(gift.worth()), CellStyles.Kind.WHOLE_MONEY));
            together(flow, gifts, first);
            flow.sentence(span + "; bench time at the posted "
                    + figures.price(review.costs().shopRate()) + " an hour.");
        }

        private static void together(RowFlow flow, List<Gift> gifts, int first) {
            int last = flow.row();
            flow.next()
                    .text("Together", CellStyles.Kind.TOTAL_WORDS)
                    .skip()
                    .formula(
                            "SUM(C" + first + ":C" + last + ")",
                            gifts.stream().mapToLong(Gift::times).sum(),
                            CellStyles.Kind.TOTAL_COUNT)
                    .formula(
                            "SUM(D" + first + ":D" + last + ")",
                            Amounts.hours(
                                    gifts.stream().mapToLong(Gift::seconds).sum()),
                            CellStyles.Kind.TOTAL)
                    .formula(
                            "SUM(E" + first + ":E" + last + ")",
                            Amounts.money(gifts.stream().mapToLong(Gift::worth).sum()),
                            CellStyles.Kind.TOTAL_COUNT);
        }
    }
}
