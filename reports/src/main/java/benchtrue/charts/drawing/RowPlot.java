package benchtrue.charts.drawing;

import java.awt.geom.Rectangle2D;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jfree.chart.annotations.XYBoxAnnotation;
import org.jfree.chart.annotations.XYLineAnnotation;
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
    private final RowRange range;

    /** A row and how far its mark stands below the top of the plot, pixels. */
    record Spot(RowChart.Row row, double y) {}

    RowPlot(RowChart chart, List<Spot> spots, double height) {
        this.chart = chart;
        this.spots = spots;
        this.height = height;
        range = RowRange.of(chart);
    }

    /** Returns the plot between two edges, with an axis above and below. */
    ChartLayout.Part part(double left, double right, double top, double axisRoom, int steps) {
        return sheet -> plot(steps, axisRoom)
                .draw(sheet, new Rectangle2D.Double(left, top, right - left, height + 2 * axisRoom), null, null, null);
    }

    private XYPlot plot(int steps, double axisRoom) {
        NumberAxis rows = Scale.hidden(0, Math.max(height, 1));
        rows.setInverted(true);
        XYPlot plot = Plots.plain(Scale.axis(range.least(), range.most(), steps, chart.figures()), rows);
        plot.setDomainAxis(1, Scale.axis(range.least(), range.most(), steps, chart.figures()));
        plot.setDomainAxisLocation(1, AxisLocation.TOP_OR_LEFT);
        plot.setFixedDomainAxisSpace(Plots.space(axisRoom, axisRoom, 0, 0));
        plot.setFixedRangeAxisSpace(Plots.space(0, 0, 0, 0));
        plot.setDomainGridlinesVisible(true);
        reference(plot);
        marks(plot);
        return plot;
    }

    private void reference(XYPlot plot) {
        if (chart.form() == RowChart.Form.BARS && range.least() < 0) {
            plot.addDomainMarker(new ValueMarker(0, Palette.TEXT.light(), TextFlow.stroke(1)), Layer.BACKGROUND);
        }
        if (Double.isNaN(chart.reference())) {
            return;
        }
        if (chart.tolerance() > 0) {
            plot.addDomainMarker(
                    new IntervalMarker(
                            chart.reference() - chart.tolerance(),
                            chart.reference() + chart.tolerance(),
                            Palette.BAND.light(),
                            TextFlow.stroke(1),
                            Palette.BAND.light(),
                            TextFlow.stroke(1),
                            1f),
                    Layer.BACKGROUND);
        }
        plot.addDomainMarker(
                new ValueMarker(chart.reference(), Palette.TEXT.light(), TextFlow.stroke(1.5f)), Layer.BACKGROUND);
    }

    private void bar(MarkRenderer renderer, Spot spot) {
        double value = spot.row().value();
        if (Double.isNaN(value)) {
            return;
        }
        Mark mark = spot.row().mark();
        renderer.addAnnotation(
                new XYBoxAnnotation(
                        Math.min(spot.row().start(), value),
                        spot.y() + BAR,
                        Math.max(spot.row().start(), value),
                        spot.y() - BAR,
                        TextFlow.stroke(1.5f),
                        mark.ink().light(),
                        mark.inside().light()),
                Layer.BACKGROUND);
    }

    /** The way from where a figure was before. */
    private static void way(MarkRenderer renderer, Spot spot) {
        if (!Double.isNaN(spot.row().start()) && !Double.isNaN(spot.row().value())) {
            renderer.addAnnotation(
                    new XYLineAnnotation(
                            spot.row().start(),
                            spot.y(),
                            spot.row().value(),
                            spot.y(),
                            TextFlow.stroke(1, 2, 2),
                            Palette.NEUTRAL.light()),
                    Layer.BACKGROUND);
        }
    }

    private void marks(XYPlot plot) {
        boolean bars = chart.form() == RowChart.Form.BARS;
        Map<Mark, XYIntervalSeries> series = new EnumMap<>(Mark.class);
        for (Spot spot : spots) {
            RowChart.Row row = spot.row();
            if (!Double.isNaN(row.value()) && !(bars && Double.isNaN(row.lower()))) {
                add(series, bars ? Mark.NONE : row.mark(), spot);
            }
            if (chart.form() == RowChart.Form.CHANGES && !Double.isNaN(row.start())) {
                alone(series(series, Mark.BEFORE), row.start(), spot);
            }
        }
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        MarkRenderer renderer = new MarkRenderer(MarkRenderer.Says.ITS_INTERVAL);
        series.forEach((mark, values) -> {
            data.addSeries(values);
            renderer.next(mark);
        });
        if (bars) {
            spots.forEach(spot -> bar(renderer, spot));
        } else if (chart.form() == RowChart.Form.CHANGES) {
            spots.forEach(spot -> way(renderer, spot));
        }
        plot.setDataset(data);
        plot.setRenderer(renderer);
    }

    private void add(Map<Mark, XYIntervalSeries> series, Mark mark, Spot spot) {
        RowChart.Row row = spot.row();
        double lower = Double.isNaN(row.lower()) ? Double.NaN : Math.max(row.lower(), range.least());
        double upper = Double.isNaN(row.upper()) ? Double.NaN : Math.min(row.upper(), range.most());
        series(series, mark).add(row.value(), lower, upper, spot.y(), spot.y(), spot.y());
        if (row.upper() > range.most()) {
            alone(series(series, Mark.BEYOND), range.most(), spot);
        }
        if (row.lower() < range.least()) {
            alone(series(series, Mark.BELOW), range.least(), spot);
        }
    }

    /** Adds a mark without an interval. */
    private static void alone(XYIntervalSeries series, double value, Spot spot) {
        series.add(value, Double.NaN, Double.NaN, spot.y(), spot.y(), spot.y());
    }

    private static XYIntervalSeries series(Map<Mark, XYIntervalSeries> series, Mark mark) {
        return series.computeIfAbsent(mark, key -> new XYIntervalSeries(key, false, true));
    }

    /**
     * What the axis of a {@link RowChart} spans: all marks and bars, the reference with its band, and of intervals as much as
     * doubles the marks' reach; beyond, an interval ends in an arrow.
     *
     * @param least lower end
     * @param most upper end
     */
    record RowRange(double least, double most) {
        private static final double AIR = 0.03;

        static RowRange of(RowChart chart) {
            boolean starts = chart.form() != RowChart.Form.MARKS;
            double base = Double.isNaN(chart.reference()) ? 0 : chart.reference();
            double near = base;
            double far = base;
            for (RowChart.Row row : chart.rows()) {
                if (!Double.isNaN(row.value())) {
                    double start = starts && !Double.isNaN(row.start()) ? row.start() : row.value();
                    near = Math.min(near, Math.min(start, row.value()));
                    far = Math.max(far, Math.max(start, row.value()));
                }
            }
            double reach = Math.max(far - near, 2 * chart.tolerance());
            double least = Math.min(near, base - chart.tolerance());
            double most = Math.max(far, base + chart.tolerance());
            for (RowChart.Row row : chart.rows()) {
                least = Double.isNaN(row.lower()) ? least : Math.min(least, Math.max(row.lower(), near - reach));
                most = Double.isNaN(row.upper()) ? most : Math.max(most, Math.min(row.upper(), far + reach));
            }
            most = most > least ? most : least + 1;
            double air = AIR * (most - least);
            return new RowRange(least == 0 ? 0 : least - air, most + air);
        }
    }
}
