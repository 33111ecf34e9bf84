package benchtrue.workbook.draft;

import benchtrue.findings.ShopPace;
import benchtrue.format.Figures;
import benchtrue.hours.JobLines;
import benchtrue.nightly.FileDigest;
import benchtrue.nightly.Report;
import benchtrue.nightly.Review;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.BackTest;
import benchtrue.revision.FitEvidence;
import benchtrue.revision.PastMethod;
import benchtrue.revision.PastScore;
import benchtrue.shop.Hours;
import benchtrue.shop.PriceBook;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.RepairType;
import benchtrue.shop.Tickets;
import benchtrue.tables.WriteTables;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.Heading;
import benchtrue.workbook.sheet.NewestLines;
import benchtrue.workbook.sheet.NotesSheet;
import benchtrue.workbook.sheet.PageSetup;
import benchtrue.workbook.sheet.SteadyWorkbook;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.streaming.SXSSFSheet;

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
        CellStyles look = new CellStyles(workbook);
        JobsSheet jobs = new JobsSheet(review, JobsSheet.MOST_JOBS);
        FamiliesSheet families = new FamiliesSheet(review);
        var decide = workbook.createSheet(DecideSheet.NAME);
        if (families.needed()) {
            families.write(workbook.createSheet(FamiliesSheet.NAME), look);
        }
        jobs.write(workbook.createSheet(JobsSheet.NAME), look);
        jobs.name(workbook);
        FitSheet fits = new FitSheet(review);
        fits.write(workbook.createSheet(FitSheet.NAME), look);
        fits.name(workbook);
        new DecideSheet(review, draft, families).write(decide, look);
        SurchargesSheet.write(review, families, workbook.createSheet(SurchargesSheet.NAME), look);
        new FirstLookSheet(review).write(workbook.createSheet(FirstLookSheet.NAME), look);
        new PastJobsSheet(review).write(workbook.createSheet(PastJobsSheet.NAME), look);
        new NotesSheet(review).write(workbook.createSheet(NotesSheet.NAME), look);
    }

    /** How the proposal and simpler rules would have done on past jobs, raw and within the guard rails. */
    static final class PastJobsSheet {
        public static final String NAME = "Tried on past jobs";
        private static final int HEADING_ROW = 4;
        private static final List<Heading> HEADINGS = List.of(
                Heading.text("What the hours would have been taken from", 42),
                Heading.figure("Jobs (lines, or tickets as a whole)", 12),
                Heading.figure("Lines that repeat their quote, left out", 12),
                Heading.figure("Jobs that fit", 10),
                Heading.figure("Hours in all, against what was worked", 14),
                Heading.figure("Missed per quoted hour, each job once", 12),
                Heading.figure("The same within the guard rails, rounded", 14),
                Heading.figure("Hours missed a job", 10));

        private final BackTest test;
        private final double share;

        PastJobsSheet(Review review) {
            test = review.revision().backTest();
            share = review.settings().policy().coverage();
        }

        public void write(SXSSFSheet sheet, CellStyles look) {
            Grid grid = new Grid(sheet, look);
            grid.row(1).text("Tried on past jobs", CellStyles.Kind.TITLE);
            grid.row(2).text(test.sentence());
            Heading.write(HEADINGS, HEADING_ROW, sheet, grid);
            int row = HEADING_ROW + 1;
            for (PastMethod method : test.methods()) {
                score(grid.row(row++), method);
            }
        }

        private void score(Grid grid, PastMethod method) {
            PastScore score = test.total(method);
            double railed = method == PastMethod.POLICY || method == PastMethod.SIZE_CURVE
                    ? Double.NaN
                    : missed(test.railedTotal(method));
            grid.text(method.words(), CellStyles.Kind.WRAPPED)
                    .number(score.jobs(), CellStyles.Kind.COUNT)
                    .number(score.lines() - score.uncopiedLines(), CellStyles.Kind.COUNT)
                    .number(score.coverage(), CellStyles.Kind.SHARE)
                    .number(score.hoursBias(), CellStyles.Kind.CHANGE)
                    .number(missed(score), CellStyles.Kind.RATIO)
                    .number(railed, CellStyles.Kind.RATIO)
                    .number(score.loss() / score.jobs() / (1 - share), CellStyles.Kind.HOURS);
        }

        /** Too long, and too short in the weight that the share of jobs that should fit gives it. */
        private double missed(PastScore score) {
            return score.ratioLoss() / score.ownJobs() / (1 - share);
        }
    }

    /** Every finished job behind the rows on which the owner decides. */
    public static final class JobsSheet {
        public static final String NAME = "Jobs";

        /** A sheet with more rows is slow to open and to recalculate; the newest jobs are kept. */
        static final int MOST_JOBS = 50_000;

        private static final int FIRST_ROW = 5;
        private static final double MILLIONTHS = 1e6;
        private static final List<Heading> HEADINGS = List.of(
                Heading.text("Repair type", 24),
                Heading.text("Ticket", 12),
                Heading.text("Line", 6),
                Heading.figure("Opened", 11),
                Heading.figure("Quoted hours against the book", 12),
                Heading.figure("Bench hours", 9),
                Heading.figure("Hours per quoted hour", 10),
                Heading.note("Tells whether jobs fit", 10));

        private final Figures figures;
        private final JobLines jobs;
        private final PriceBook against;
        private final FitEvidence evidence;
        private final ShopPace pace;
        private final int[] shown;
        private final int all;

        /** Takes how many jobs may stand on the sheet. */
        public JobsSheet(Review review, int most) {
            figures = review.settings().figures();
            jobs = review.jobs();
            against = review.revision().against(review.ledger());
            evidence = FitEvidence.of(jobs, review.findings().surelyOwn().rows());
            pace = review.findings().pace();
            int[] judged = IntStream.range(0, jobs.size())
                    .filter(line -> jobs.judged(line) && jobs.todayQuotedHours(line) > 0)
                    .toArray();
            all = judged.length;
            shown = NewestLines.of(jobs, judged, most);
        }

        public void write(SXSSFSheet sheet, CellStyles look) {
            Grid grid = new Grid(sheet, look);
            grid.row(1).text("The finished jobs behind each row", CellStyles.Kind.TITLE);
            grid.row(2)
                    .text(
                            all == shown.length
                                    ? "Hours in slanted grey were dealt from a ticket logged as a whole; where a repair has enough jobs"
                                            + " with hours of their own, only those tell whether jobs fit."
                                    : "Only the newest " + figures.count(shown.length) + " of " + figures.count(all)
                                            + " jobs; all are in lines.csv.");
            grid.row(3)
                    .text(
                            "Not printed, since its jobs fill many pages. To print them, clear the print area (print range).");
            Heading.write(HEADINGS, FIRST_ROW - 1, sheet, grid);
            PageSetup.nothing(sheet, HEADINGS.size());
            for (int i = 0; i < shown.length; i++) {
                job(grid.row(FIRST_ROW + i), shown[i]);
            }
            Heading.table("JobsTable", HEADINGS, FIRST_ROW - 1, FIRST_ROW + shown.length - 1, sheet);
        }

        private void job(Grid grid, int line) {
            Tickets tickets = jobs.ledger().tickets();
            QuotedLines lines = jobs.ledger().lines();
            double hours = Hours.of(jobs.actualSeconds(line));
            double paced = pace.sure() ? hours * pace.toToday(tickets.opened(lines.ticket(line))) : hours;
            double quoted = jobs.todayQuotedHours(line) * draftedOverToday(lines.repairType(line));
            grid.text(jobs.ledger().repairTypes().name(lines.repairType(line)))
                    .text(tickets.ticket(lines.ticket(line)))
                    .text(lines.line(line))
                    .number(Amounts.serial(tickets.opened(lines.ticket(line))), CellStyles.Kind.DATE)
                    .number(quoted, CellStyles.Kind.HOURS)
                    .number(hours, jobs.splitSeconds(line) > 0 ? CellStyles.Kind.SPLIT_HOURS : CellStyles.Kind.HOURS)
                    .number(Math.rint(paced / quoted * MILLIONTHS) / MILLIONTHS, CellStyles.Kind.RATIO)
                    .text(evidence.counts(line) ? "yes" : "no", CellStyles.Kind.NOTE);
        }

        /** Hours of the book that the draft stands against, per hour of today's; 1 where they are the same. */
        private double draftedOverToday(int repairType) {
            Ledger ledger = jobs.ledger();
            String key = ledger.repairTypes().name(repairType);
            long drafted = against.type(key).map(RepairType::bookSeconds).orElse(0L);
            long today = ledger.books()
                    .type(key, ledger.asOf())
                    .map(RepairType::bookSeconds)
                    .orElse(0L);
            return drafted > 0 && today > 0 && drafted != today ? Hours.of(drafted) / Hours.of(today) : 1;
        }

        /** Names the columns that formulas of other sheets ask for. */
        void name(Workbook workbook) {
            name(workbook, "JobRepair", 'A');
            name(workbook, "JobRatio", 'G');
            name(workbook, "JobCounts", 'H');
        }

        private void name(Workbook workbook, String title, char column) {
            Name name = workbook.createName();
            name.setNameName(title);
            int last = FIRST_ROW + Math.max(shown.length, 1) - 1;
            name.setRefersToFormula(NAME + "!$" + column + "$" + FIRST_ROW + ":$" + column + "$" + last);
        }
    }
}
