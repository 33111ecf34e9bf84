package benchtrue.charts;

import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.findings.Cause;
import benchtrue.format.Figures;
import java.util.ArrayList;
import java.util.List;

/** The jobs of one repair in groups by what sets some of them apart. */
final class JobsByCause {
    private static final int MOST_ROWS = 12;
    private final ChartContext subject;
    private final Cause cause;

    JobsByCause(ChartContext subject, Cause cause) {
        this.subject = subject;
        this.cause = cause;
    }

    Picture picture() {
        String key = subject.review().ledger().repairTypes().name(cause.repairType());
        return new Picture(
                "cause-" + JobHistory.FileName.of(key, cause.repairType()) + "-"
                        + benchtrue.format.Words.of(cause.kind()),
                subject.label(cause.repairType()) + ": jobs " + cause.label() + " take "
                        + subject.figures().ratio(cause.size()) + " times as long as the others",
                "What follows: " + cause.remedy() + ". Right: jobs. Lines: 90\u00a0% range.",
                drawing(cause, subject.figures()),
                Picture.Scope.ONE_REPAIR);
    }

    static RowChart drawing(Cause cause, Figures figures) {
        List<RowChart.Row> rows = new ArrayList<>();
        Mark apart = cause.size() > 1 ? Mark.UNDER : Mark.OVER;
        for (Cause.Group group : cause.groups().stream().limit(MOST_ROWS).toList()) {
            rows.add(new RowChart.Row(
                    group.label(),
                    group.loadFactor(),
                    group.lower(),
                    group.upper(),
                    rows.isEmpty() ? apart : Mark.PLAIN,
                    figures.ratio(group.loadFactor()) + ", " + figures.count(group.jobs(), "job", "jobs")));
        }
        return new RowChart("hours per quoted hour", RowChart.Form.MARKS, 1, 0, rows, List.of(), figures);
    }
}
