package benchtrue.workbook.review;

import benchtrue.findings.WriterQuotes;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.PageSetup;
import benchtrue.workbook.sheet.RowFlow;
import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** What each writer's quotes came to, family by family, in the order of names; only where the shop shows figures about people. */
final class WritersSheet {
    static final String NAME = "Quote writers";

    private WritersSheet() {}

    static void write(List<WriterQuotes> quotes, SXSSFSheet sheet, CellStyles look) {
        RowFlow flow = new RowFlow(sheet, look, 20, 16, 8, 12, 12, 12, 12, 14, 16);
        flow.title("Quotes by writer and family of repairs");
        flow.sentence(
                "For planning and training, no ranking, and no ground for pay or discipline: instruments and customers differ"
                        + " between writers. Tell the people concerned first. Only writers with 30 jobs or more over three kinds of repair,"
                        + " and families with five jobs or more.");
        flow.headings(
                List.of(
                        "Writer",
                        "Family",
                        "Jobs",
                        "Quoted per hour of the book",
                        "Hours per quoted hour",
                        "at least (90 % sure)",
                        "at most (90 % sure)",
                        "Found and never quoted, hours",
                        "Quoted below the book, money a year (below zero: above it)"),
                0,
                1);
        for (WriterQuotes row : quotes) {
            flow.next()
                    .text(row.writer())
                    .text(row.family())
                    .number(row.jobs(), CellStyles.Kind.COUNT)
                    .number(row.quotedOverBook(), CellStyles.Kind.RATIO)
                    .number(row.load(), CellStyles.Kind.RATIO)
                    .number(row.lower(), CellStyles.Kind.RATIO)
                    .number(row.upper(), CellStyles.Kind.RATIO)
                    .number(row.unquotedHours(), CellStyles.Kind.HOURS)
                    .number(Amounts.about(row.belowBook()), CellStyles.Kind.WHOLE_MONEY);
        }
        PageSetup.landscape(sheet);
    }
}
