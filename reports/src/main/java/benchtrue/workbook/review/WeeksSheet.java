package benchtrue.workbook.review;

import benchtrue.calendar.RepairWeeks;
import benchtrue.format.Words;
import benchtrue.nightly.Review;
import benchtrue.shop.Absent;
import benchtrue.shop.WaitReason;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.Heading;
import benchtrue.workbook.sheet.PageSetup;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** How many weeks visits take, repair by repair, and what to promise today. */
final class WeeksSheet {
    static final String NAME = "Weeks";
    private static final int FIRST_ROW = 4;
    private static final double WEEK = 7;
    private static final List<WaitReason> WAITS = Stream.of(WaitReason.values())
            .filter(reason -> reason != WaitReason.BENCH && reason != WaitReason.PICK_UP)
            .toList();

    private final Review review;

    WeeksSheet(Review review) {
        this.review = review;
    }

    private static List<Heading> headings() {
        List<Heading> headings = new ArrayList<>(List.of(
                Heading.text("Family", 14),
                Heading.text("Largest repair", 30),
                Heading.figure("Visits", 8),
                Heading.figure("Not ready yet", 8),
                Heading.figure("Half ready within (weeks)", 10),
                Heading.figure("Four in five within (weeks)", 10),
                Heading.figure("Until work begins (days)", 10),
                Heading.figure("At the bench (days)", 10)));
        WAITS.forEach(reason ->
                headings.add(Heading.figure("Waiting: " + Words.of(reason).replace('-', ' ') + " (days)", 12)));
        headings.add(Heading.figure("To promise today for it alone (days)", 12));
        headings.add(Heading.text("Which visits (empty: all)", 30));
        return headings;
    }

    void write(SXSSFSheet sheet, CellStyles look) {
        List<Heading> headings = headings();
        Grid grid = new Grid(sheet, look);
        grid.row(1).text("How many weeks it takes, and what to promise", CellStyles.Kind.TITLE);
        grid.row(2)
                .text(review.calendar()
                        .trial()
                        .sentence(review.settings().figures())
                        .orElse("Too little is past to try promises on it."));
        Heading.write(headings, FIRST_ROW - 1, sheet, grid);
        int row = FIRST_ROW;
        for (RepairWeeks weeks : review.calendar().weeks()) {
            weeks(grid.row(row++), weeks);
        }
        Heading.table("WeeksTable", headings, FIRST_ROW - 1, row - 1, sheet);
        PageSetup.area(sheet, headings.size(), row - 1);
    }

    private void weeks(Grid grid, RepairWeeks row) {
        grid.text(row.family())
                .text(row.repairType() == Absent.INDEX ? "all" : review.ledger().title(row.repairType()))
                .number(row.visits(), CellStyles.Kind.COUNT)
                .number(row.open(), CellStyles.Kind.COUNT)
                .number(row.middle() / WEEK, CellStyles.Kind.TENTHS)
                .number(row.most() / WEEK, CellStyles.Kind.TENTHS)
                .number(row.queue(), CellStyles.Kind.TENTHS)
                .number(row.bench(), CellStyles.Kind.TENTHS);
        WAITS.forEach(reason -> grid.number(row.waits().getOrDefault(reason, Double.NaN), CellStyles.Kind.TENTHS));
        grid.number(Absent.has(row.promise()) ? row.promise() : Double.NaN, CellStyles.Kind.COUNT)
                .text(row.group());
    }
}
