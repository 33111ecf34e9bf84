package benchtrue.workbook.review;

import benchtrue.costing.CostedLines;
import benchtrue.format.Figures;
import benchtrue.format.Words;
import benchtrue.hours.JobLines;
import benchtrue.nightly.Review;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Hours;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.Tickets;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.Heading;
import benchtrue.workbook.sheet.NewestLines;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Every quoted line with its hours and money: the rows behind the findings. */
final class LinesSheet {
    static final String NAME = "Lines";

    /** A sheet with more rows is slow to open; the newest lines are kept. */
    static final int MOST_LINES = 50_000;

    private static final int FIRST_ROW = 4;
    private static final List<Heading> HEADINGS = List.of(
            Heading.text("Ticket", 12),
            Heading.text("Line", 6),
            Heading.text("Repair type", 24),
            Heading.text("Instrument class", 18),
            Heading.figure("Opened", 11),
            Heading.figure("Closed", 11),
            Heading.note("Stands", 9),
            Heading.note("Counts in the findings", 10),
            Heading.figure("Quoted hours", 9),
            Heading.figure("Quoted hours against today's book", 12),
            Heading.figure("Logged to the line (h)", 10),
            Heading.figure("Dealt from the ticket (h)", 10),
            Heading.figure("Bench hours", 9),
            Heading.figure("Hours putting it right (h)", 10),
            Heading.figure("Labour revenue", 11),
            Heading.figure("Parts revenue", 11),
            Heading.figure("Labour cost", 11),
            Heading.figure("Parts cost", 11),
            Heading.figure("Overhead carried", 11),
            Heading.figure("Margin", 11),
            Heading.figure("Earned per bench hour", 11));

    private final Figures figures;
    private final JobLines jobs;
    private final CostedLines costs;
    private final Ledger ledger;
    private final int[] shown;
    private final LineFacts facts;
    private final List<Heading> headings;

    /** Takes how many lines may stand on the sheet. */
    LinesSheet(Review review, int most) {
        figures = review.settings().figures();
        jobs = review.jobs();
        costs = review.costs();
        ledger = review.ledger();
        shown = NewestLines.of(jobs, IntStream.range(0, jobs.size()).toArray(), most);
        facts = new LineFacts(review);
        headings = Stream.concat(HEADINGS.stream(), facts.headings().stream()).toList();
    }

    /** Returns whether every line is on the sheet, so that formulas over it give the shop's whole figures. */
    boolean whole() {
        return shown.length == jobs.size();
    }

    /** Returns an absolute range over one of the sheet's columns. */
    String range(String column) {
        int last = FIRST_ROW + Math.max(shown.length, 1) - 1;
        return NAME + "!$" + column + "$" + FIRST_ROW + ":$" + column + "$" + last;
    }

    void write(SXSSFSheet sheet, CellStyles look) {
        Grid grid = new Grid(sheet, look);
        grid.row(1).text("Every quoted line, with the hours it took and what it earned", CellStyles.Kind.TITLE);
        grid.row(2).text(caption());
        Heading.write(headings, FIRST_ROW - 1, sheet, grid);
        for (int i = 0; i < shown.length; i++) {
            line(grid.row(FIRST_ROW + i), FIRST_ROW + i, shown[i]);
        }
        Heading.table("LinesTable", headings, FIRST_ROW - 1, FIRST_ROW + shown.length - 1, sheet);
    }

    private String caption() {
        String hours = "Hours in slanted grey were logged to a ticket as a whole and dealt over its lines.";
        return whole()
                ? hours
                : "Only the newest " + figures.count(shown.length) + " of " + figures.count(jobs.size())
                        + " lines; all are in lines.csv. " + hours;
    }

    private void line(Grid grid, int row, int line) {
        Tickets tickets = ledger.tickets();
        QuotedLines lines = ledger.lines();
        int ticket = lines.ticket(line);
        grid.text(tickets.ticket(ticket))
                .text(lines.line(line))
                .text(ledger.repairTypes().name(lines.repairType(line)))
                .text(tickets.instrumentClass(ticket))
                .number(Amounts.serial(tickets.opened(ticket)), CellStyles.Kind.DATE)
                .number(Amounts.serial(tickets.closed(ticket)), CellStyles.Kind.DATE)
                .text(Words.of(jobs.state(line)), CellStyles.Kind.NOTE)
                .text(jobs.judged(line) ? "yes" : "no", CellStyles.Kind.NOTE);
        hours(grid, row, line);
        money(grid, row, line);
        facts.write(grid, line);
    }

    private void hours(Grid grid, int row, int line) {
        boolean split = jobs.splitSeconds(line) > 0;
        grid.number(Amounts.hours(ledger.lines().judgedSeconds(line)), CellStyles.Kind.HOURS)
                .number(jobs.todayQuotedHours(line), CellStyles.Kind.HOURS)
                .number(Hours.of(jobs.labelledSeconds(line)), CellStyles.Kind.HOURS)
                .number(split ? Hours.of(jobs.splitSeconds(line)) : 0, CellStyles.Kind.SPLIT_HOURS)
                .formula(
                        "K" + row + "+L" + row,
                        Hours.of(jobs.actualSeconds(line)),
                        split ? CellStyles.Kind.SPLIT_HOURS : CellStyles.Kind.HOURS)
                .number(Hours.of(jobs.reworkSeconds(line)), CellStyles.Kind.HOURS);
    }

    private void money(Grid grid, int row, int line) {
        double revenue = Amounts.money(costs.labourRevenue(line));
        double rate = jobs.actualSeconds(line) > 0 ? revenue / Hours.of(jobs.actualSeconds(line)) : Double.NaN;
        grid.number(revenue, CellStyles.Kind.MONEY)
                .number(Amounts.money(costs.partsRevenue(line)), CellStyles.Kind.MONEY)
                .number(Amounts.money(costs.labourCost(line)), CellStyles.Kind.MONEY)
                .number(Amounts.money(costs.partsCost(line)), CellStyles.Kind.MONEY)
                .number(Amounts.money(costs.overheadCost(line)), CellStyles.Kind.MONEY);
        String r = Integer.toString(row);
        String known = "OR(O#=\"\",Q#=\"\",S#=\"\")".replace("#", r);
        grid.formula(
                "IF(" + known + ",\"\",O#+P#-Q#-R#-S#)".replace("#", r),
                Amounts.money(costs.margin(line)),
                CellStyles.Kind.MONEY);
        grid.formula("IF(OR(O#=\"\",M#=0),\"\",O#/M#)".replace("#", r), rate, CellStyles.Kind.MONEY);
    }
}
