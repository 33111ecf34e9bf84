package benchtrue.charts;

import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.findings.Cause;
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
        List<RowChart.Row> rows = new ArrayList<>();
        cause.groups().stream().limit(MOST_ROWS).forEach(group -> rows.add(row(group, rows.isEmpty())));
        return new Picture(
                "cause-" + JobHistory.FileName.of(key, cause.repairType()) + "-"
                        + benchtrue.format.Words.of(cause.kind()),
                subject.label(cause.repairType()) + ": jobs " + cause.label() + " take "
                        + subject.figures().ratio(cause.size()) + " times as long as the others",
                "What follows: " + cause.remedy() + ". Right: jobs. Lines: 90\u00a0% range.",
                new RowChart("hours per quoted hour", RowChart.Form.MARKS, 1, 0, rows, List.of(), subject.figures()),
                Picture.Scope.ONE_REPAIR);
    }

    private RowChart.Row row(Cause.Group group, boolean own) {
        Mark apart = cause.size() > 1 ? Mark.UNDER : Mark.OVER;
        return new RowChart.Row(
                group.label(),
                group.loadFactor(),
                group.lower(),
                group.upper(),
                own ? apart : Mark.PLAIN,
                subject.figures().ratio(group.loadFactor()) + ", " + subject.count(group.jobs(), "job", "jobs"));
    }
}
