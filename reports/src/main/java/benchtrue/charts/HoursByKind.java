package benchtrue.charts;

import benchtrue.charts.drawing.LegendEntry;
import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.costing.ShopMoney;
import benchtrue.costing.WorkKind;
import benchtrue.costing.WorkMonth;
import benchtrue.shop.Hours;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where the hours of up to twelve whole months went: sold, put right, quoting, handling, shop. */
final class HoursByKind {
    private static final int YEAR = 12;
    private final ChartContext subject;
    private final List<WorkMonth> months;

    HoursByKind(ChartContext subject) {
        this.subject = subject;
        ShopMoney shop = subject.review().costs().shop();
        months = shop.work().stream()
                .filter(month -> month.month() <= shop.lastWholeMonth() && month.month() > shop.lastWholeMonth() - YEAR)
                .toList();
    }

    /** Returns the picture; empty where no whole month has logged time. */
    Optional<Picture> picture() {
        long all = months.stream().mapToLong(WorkMonth::loggedSeconds).sum();
        return all <= 0 ? Optional.empty() : Optional.of(picture(all));
    }

    private Picture picture(long all) {
        List<RowChart.Row> rows = new ArrayList<>();
        for (WorkKind kind : WorkKind.values()) {
            long seconds = seconds(kind);
            if (seconds != 0) {
                rows.add(new RowChart.Row(
                        kind.words(),
                        Hours.of(seconds),
                        kind == WorkKind.SOLD ? Mark.PLAIN : Mark.UNSOLD,
                        subject.figures().hours(seconds) + ", "
                                + subject.figures().percent((double) seconds / all)));
            }
        }
        return new Picture(
                "hours-by-kind",
                subject.figures().percent((double) seconds(WorkKind.SOLD) / all) + " of the logged hours were sold",
                subject.figures().hours(all) + " logged from "
                        + subject.figures().month(months.get(0).month()) + " to "
                        + subject.figures().month(months.get(months.size() - 1).month())
                        + ". Waiting is no bench time and stands apart.",
                new RowChart(
                        "hours by the day worked",
                        RowChart.Form.BARS,
                        Double.NaN,
                        0,
                        rows,
                        List.of(LegendEntry.bar(Mark.PLAIN, "sold"), LegendEntry.bar(Mark.UNSOLD, "not sold")),
                        subject.figures()));
    }

    private long seconds(WorkKind kind) {
        return months.stream().mapToLong(month -> month.seconds(kind)).sum();
    }
}
