package benchtrue.charts;

import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.findings.QuoteSizes;
import benchtrue.findings.QuoteSizes.SizeClass;
import benchtrue.format.Figures;
import benchtrue.revision.SizeLines;
import java.util.Comparator;
import java.util.List;

/** What small and large quotes of one repair take for each quoted hour, where that surely differs. */
final class SizeOfQuote {
    private static final int MOST_PICTURES = 3;

    private final ChartContext subject;
    private final Figures figures;

    SizeOfQuote(ChartContext subject) {
        this.subject = subject;
        figures = subject.figures();
    }

    /** Returns a picture each of the repairs with the most jobs; the workbook lists all. */
    List<Picture> pictures() {
        return subject.review().revision().sizeLines().stream()
                .sorted(Comparator.comparingInt(lines -> -jobs(lines.sizes())))
                .limit(MOST_PICTURES)
                .map(this::picture)
                .toList();
    }

    private static int jobs(QuoteSizes sizes) {
        return sizes.small().jobs() + sizes.large().jobs();
    }

    private Picture picture(SizeLines lines) {
        QuoteSizes sizes = lines.sizes();
        String key = subject.review().ledger().repairTypes().name(sizes.repairType());
        String title = Character.toUpperCase(lines.finding().charAt(0))
                + lines.finding().substring(1);
        return new Picture(
                "size-of-quote-" + JobHistory.FileName.of(key, sizes.repairType()),
                title,
                "The middle job of each size of quote, leaning on the repair's own. " + lines.proposal()
                        + ". Right: hours per quoted hour, jobs. Lines: 90\u00a0% range.",
                new RowChart(
                        "hours per quoted hour",
                        RowChart.Form.MARKS,
                        1,
                        0,
                        sizes.classes().stream().map(this::row).toList(),
                        List.of(),
                        figures));
    }

    private RowChart.Row row(SizeClass size) {
        return new RowChart.Row(
                "quoted " + figures.number(size.leastQuoted(), 1) + " to " + figures.hours(size.mostQuoted()),
                size.load(),
                size.lower(),
                size.upper(),
                size.lower() > 1 ? Mark.UNDER : size.upper() < 1 ? Mark.OVER : Mark.ON_THE_MARK,
                figures.ratio(size.load()) + ", " + subject.count(size.jobs(), "job", "jobs"));
    }
}
