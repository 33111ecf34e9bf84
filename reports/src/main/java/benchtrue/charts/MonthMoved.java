package benchtrue.charts;

import benchtrue.charts.drawing.LegendEntry;
import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.costing.MarginBridge;
import benchtrue.shop.Absent;
import benchtrue.shop.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Why the margin of the newest whole month differs from the month before: each part begins where the last one ended. */
final class MonthMoved {
    private final ChartContext subject;

    MonthMoved(ChartContext subject) {
        this.subject = subject;
    }

    /** Returns the picture; empty where wages, and with them margins, are not known. */
    Optional<Picture> picture() {
        int last = subject.review().costs().shop().lastWholeMonth();
        return subject.review().costs().shop().monthBridges().stream()
                .filter(bridge -> bridge.to() == last)
                .findFirst()
                .map(this::picture);
    }

    private Picture picture(MarginBridge bridge) {
        long change = bridge.change();
        String title = subject.figures().month(bridge.to()) + " earned "
                + subject.figures().money(Math.abs(change))
                + (change < 0 ? " less" : " more") + " than "
                + subject.figures().month(bridge.from());
        return new Picture(
                "why-the-month-moved",
                title,
                "Margin of the jobs finished in each month, and what moved it; the parts add up to the cent.",
                new RowChart(
                        subject.currency("money") + ", margin of finished jobs",
                        RowChart.Form.BARS,
                        Double.NaN,
                        0,
                        rows(bridge),
                        List.of(
                                LegendEntry.bar(Mark.PLAIN, "margin of a month"),
                                LegendEntry.bar(Mark.OVER, "raised it"),
                                LegendEntry.bar(Mark.UNDER, "lowered it")),
                        subject.figures()));
    }

    private List<RowChart.Row> rows(MarginBridge bridge) {
        List<RowChart.Row> rows = new ArrayList<>();
        rows.add(total(bridge.from(), bridge.before()));
        long reached = bridge.before();
        reached = part(rows, "more or less work", bridge.volume(), reached);
        reached = part(rows, "other kinds of jobs", bridge.mix(), reached);
        reached = part(rows, "prices", bridge.price(), reached);
        reached = part(rows, "hours against the book", bridge.efficiency(), reached);
        reached = part(rows, "wages", bridge.wages(), reached);
        reached = part(rows, "parts", bridge.parts(), reached);
        part(rows, "overhead carried by jobs", bridge.overhead(), reached);
        rows.add(total(bridge.to(), bridge.after()));
        return rows;
    }

    private RowChart.Row total(int month, long margin) {
        String label = "margin, " + subject.figures().month(month);
        return new RowChart.Row(
                label, Money.units(margin), Mark.PLAIN, subject.figures().money(margin));
    }

    private long part(List<RowChart.Row> rows, String label, long amount, long reached) {
        if (!Absent.has(amount)) {
            return reached;
        }
        long end = reached + amount;
        rows.add(new RowChart.Row(
                label,
                Money.units(reached),
                Money.units(end),
                Double.NaN,
                Double.NaN,
                amount < 0 ? Mark.UNDER : Mark.OVER,
                (amount > 0 ? "+" : "") + subject.figures().money(amount)));
        return end;
    }
}
