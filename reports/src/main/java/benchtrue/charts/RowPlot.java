package benchtrue.charts;

import java.awt.geom.Rectangle2D;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jfree.chart.annotations.XYBoxAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;

/** The plot of a {@link RowChart}: values along the axis, rows at given heights. */
final class RowPlot {
    private static final int BAR = 6;
    private final RowChart chart;
    private final List<Spot> spots;
    private final double height;
    private double least;
    private double most;

    /** A row and how far its mark stands below the top of the plot, pixels. */
    record Spot(RowChart.Row row, double y) {}

    RowPlot(RowChart chart, List<Spot> spots, double height) {
        this.chart = chart;
        this.spots = spots;
        this.height = height;
        range();
    }

    /** Marks decide the range; an interval may double its reach, and is cut with an arrow beyond. */
    private void range() {
        double reference = Double.isNaN(chart.reference()) ? 0 : chart.reference();
        least = reference - chart.tolerance();
        most = reference + chart.tolerance();
        double far = reference;
        double near = reference;
        for (Spot spot : spots) {
            RowChart.Row row = spot.row();
            far = Double.isNaN(row.value()) ? far : Math.max(far, row.value());
            near = Double.isNaN(row.value()) ? near : Math.min(near, row.value());
        }
        double reach = Math.max(far - near, 2 * chart.tolerance());
        for (Spot spot : spots) {
            most = Math.max(
                    most,
                    Double.isNaN(spot.row().upper()) ? far : Math.min(spot.row().upper(), far + reach));
            least = Math.min(
                    least,
                    Double.isNaN(spot.row().lower())
                            ? near
                            : Math.max(spot.row().lower(), near - reach));
        }
        most = most > least ? most : least + 1;
        double air = (most - least) * 0.03;
        most += air;
        least = least == 0 && chart.form() == RowChart.Form.BARS ? 0 : least - air;
    }

    /** Returns the plot between two edges, with an axis above and below. */
    Layout.Part part(double left, double right, double top, double axisRoom, int steps) {
        return sheet -> plot(steps, axisRoom)
                .draw(sheet, new Rectangle2D.Double(left, top, right - left, height + 2 * axisRoom), null, null, null);
    }

    private XYPlot plot(int steps, double axisRoom) {
        NumberAxis rows = Scale.hidden(0, Math.max(height, 1));
        rows.setInverted(true);
        XYPlot plot = Plots.plain(Scale.axis(least, most, steps, chart.figures()), rows);
        plot.setDomainAxis(1, Scale.axis(least, most, steps, chart.figures()));
        plot.setDomainAxisLocation(1, AxisLocation.TOP_OR_LEFT);
        plot.setFixedDomainAxisSpace(Plots.space(axisRoom, axisRoom, 0, 0));
        plot.setFixedRangeAxisSpace(Plots.space(0, 0, 0, 0));
        plot.setDomainGridlinesVisible(true);
        reference(plot);
        marks(plot);
        return plot;
    }

    private void reference(XYPlot plot) {
        if (Double.isNaN(chart.reference())) {
            return;
        }
        if (chart.tolerance() > 0) {
            plot.addDomainMarker(
                    new IntervalMarker(
                            chart.reference() - chart.tolerance(),
                            chart.reference() + chart.tolerance(),
                            Ink.BAND.light(),
                            Flow.stroke(1),
                            Ink.BAND.light(),
                            Flow.stroke(1),
                            1f),
                    Layer.BACKGROUND);
        }
        plot.addDomainMarker(new ValueMarker(chart.reference(), Ink.TEXT.light(), Flow.stroke(1.5f)), Layer.BACKGROUND);
    }

    private void bar(MarkRenderer renderer, Spot spot) {
        double value = spot.row().value();
        if (Double.isNaN(value)) {
            return;
        }
        Mark mark = spot.row().mark();
        renderer.addAnnotation(
                new XYBoxAnnotation(
                        Math.min(0, value),
                        spot.y() + BAR,
                        Math.max(0, value),
                        spot.y() - BAR,
                        Flow.stroke(1.5f),
                        mark.ink().light(),
                        mark.inside().light()),
                Layer.BACKGROUND);
    }

    private void marks(XYPlot plot) {
        boolean bars = chart.form() == RowChart.Form.BARS;
        Map<Mark, XYIntervalSeries> series = new EnumMap<>(Mark.class);
        for (Spot spot : spots) {
            RowChart.Row row = spot.row();
            if (Double.isNaN(row.value()) || (bars && Double.isNaN(row.lower()))) {
                continue;
            }
            double lower = Double.isNaN(row.lower()) ? row.value() : Math.max(row.lower(), least);
            double upper = Double.isNaN(row.upper()) ? row.value() : Math.min(row.upper(), most);
            series.computeIfAbsent(row.mark(), mark -> new XYIntervalSeries(mark, false, true))
                    .add(row.value(), lower, upper, spot.y(), spot.y(), spot.y());
        }
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        MarkRenderer renderer = new MarkRenderer();
        series.forEach((mark, values) -> {
            data.addSeries(values);
            if (bars) {
                renderer.nextIntervalOnly();
            } else {
                renderer.next(mark);
            }
        });
        if (bars) {
            spots.forEach(spot -> bar(renderer, spot));
        }
        plot.setDataset(data);
        plot.setRenderer(renderer);
    }
}
