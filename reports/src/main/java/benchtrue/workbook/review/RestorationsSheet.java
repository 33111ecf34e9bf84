package benchtrue.workbook.review;

import benchtrue.findings.Restorations;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.PageSetup;
import benchtrue.workbook.sheet.RowFlow;
import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Large visits judged as wholes: which run over, at which stage, and what shows it at the first look. */
final class RestorationsSheet {
    static final String NAME = "Restorations";

    private RestorationsSheet() {}

    static void write(List<Restorations> groups, SXSSFSheet sheet, CellStyles look) {
        RowFlow flow = new RowFlow(sheet, look, 12, 36, 10, 12, 12, 12, 12, 12, 12, 44);
        flow.title("Restorations as wholes");
        flow.sentence(
                "Visits with four repairs or more, or above 20 quoted hours, against today's book. A stage counts only visits in"
                        + " which every repair has hours of its own; visits whose hours repeat the quote are left out.");
        flow.headings(
                List.of(
                        "By",
                        "Group",
                        "Visits",
                        "Quoted, hours",
                        "Found on the bench, hours of them",
                        "Taken, hours",
                        "Hours per quoted hour",
                        "at least (90 % sure)",
                        "at most (90 % sure)",
                        "What follows"),
                0,
                1,
                9);
        for (Restorations row : groups) {
            flow.next()
                    .text(row.by().words())
                    .text(row.group())
                    .number(row.restorations(), CellStyles.Kind.COUNT)
                    .number(row.quotedHours(), CellStyles.Kind.HOURS)
                    .number(row.foundHours(), CellStyles.Kind.HOURS)
                    .number(row.takenHours(), CellStyles.Kind.HOURS)
                    .number(row.load(), CellStyles.Kind.RATIO)
                    .number(row.lower(), CellStyles.Kind.RATIO)
                    .number(row.upper(), CellStyles.Kind.RATIO)
                    .text(row.told());
        }
        PageSetup.landscape(sheet);
    }
}
