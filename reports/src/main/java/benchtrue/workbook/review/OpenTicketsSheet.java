package benchtrue.workbook.review;

import benchtrue.calendar.Call;
import benchtrue.calendar.OpenTicket;
import benchtrue.nightly.Review;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.Heading;
import benchtrue.workbook.sheet.PageSetup;
import benchtrue.workbook.sheet.TextHeight;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Every open ticket once, where it stands, and what to say to whom. */
final class OpenTicketsSheet {
    static final String NAME = "Open tickets";
    private static final int FIRST_ROW = 4;
    private static final int REPAIRS_WIDTH = 30;
    private static final int WORDS_WIDTH = 36;
    private static final List<Heading> HEADINGS = List.of(
            Heading.text("Ticket", 12),
            Heading.text("Stands", 20),
            Heading.figure("Since", 11),
            Heading.figure("Days", 7),
            Heading.figure("Usually until", 11),
            Heading.note("Repairs", REPAIRS_WIDTH),
            Heading.text("Why it stands there", WORDS_WIDTH),
            Heading.figure("Brings (money)", 10),
            Heading.figure("Promised", 11),
            Heading.figure("Day to promise (kept four times in five)", 13),
            Heading.figure("A call is worth, about (money)", 11),
            Heading.note("Why to call", WORDS_WIDTH),
            Heading.text("Without a call", WORDS_WIDTH),
            Heading.text("What to say", WORDS_WIDTH));

    private final Review review;
    private final Map<Integer, Call> calls;

    OpenTicketsSheet(Review review) {
        this.review = review;
        calls = review.answers().calls().stream().collect(Collectors.toMap(Call::ticket, Function.identity()));
    }

    void write(SXSSFSheet sheet, CellStyles look) {
        Grid grid = new Grid(sheet, look);
        grid.row(1).text("Where every open ticket stands, and what to say to whom", CellStyles.Kind.TITLE);
        grid.row(2).text("Usually until: four in five such stretches were over by then. An empty cell is not known.");
        Heading.write(HEADINGS, FIRST_ROW - 1, sheet, grid);
        int row = FIRST_ROW;
        for (OpenTicket ticket : review.calendar().open()) {
            ticket(grid.row(row++), ticket);
        }
        Heading.table("OpenTicketsTable", HEADINGS, FIRST_ROW - 1, row - 1, sheet);
        PageSetup.area(sheet, HEADINGS.size(), row - 1);
    }

    private void ticket(Grid grid, OpenTicket ticket) {
        String repairs = review.ledger().titles(ticket.repairs());
        Call call = calls.get(ticket.ticket());
        float height = Math.max(TextHeight.of(repairs, REPAIRS_WIDTH), TextHeight.of(ticket.reason(), WORDS_WIDTH));
        if (call != null) {
            height = Math.max(height, TextHeight.of(call.why(), WORDS_WIDTH));
            height = Math.max(height, TextHeight.of(call.cost(), WORDS_WIDTH));
            height = Math.max(height, TextHeight.of(call.say(), WORDS_WIDTH));
        }
        grid.tall(height)
                .text(review.ledger().tickets().ticket(ticket.ticket()))
                .text(ticket.state().words())
                .number(Amounts.serial(ticket.since()), CellStyles.Kind.DATE)
                .number(review.ledger().asOf() - ticket.since(), CellStyles.Kind.COUNT)
                .number(Amounts.serial(ticket.until()), CellStyles.Kind.DATE)
                .text(repairs, CellStyles.Kind.NOTE)
                .text(ticket.reason(), CellStyles.Kind.WRAPPED)
                .number(Amounts.money(ticket.worth()), CellStyles.Kind.MONEY)
                .number(Amounts.serial(review.ledger().tickets().promised(ticket.ticket())), CellStyles.Kind.DATE)
                .number(Amounts.serial(ticket.promise()), CellStyles.Kind.DATE);
        if (call != null) {
            grid.number(call.saves() > 0 ? Amounts.about(call.saves()) : Double.NaN, CellStyles.Kind.WHOLE_MONEY)
                    .text(call.why(), CellStyles.Kind.NOTE)
                    .text(call.cost(), CellStyles.Kind.WRAPPED)
                    .text(call.say(), CellStyles.Kind.WRAPPED);
        }
    }
}
