package benchtrue.charts.drawing;

import benchtrue.format.Figures;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * Falling curves of how many jobs, in percent, are still on the bench after so many hours for each hour quoted.
 *
 * @param lines curves, drawn in this order
 * @param open hours so far and height of each job still on the bench
 * @param openWords what stands for such a job
 * @param most hours for each hour quoted at the right edge
 * @param figures how numbers are written
 */
public record CurveChart(List<Line> lines, List<Point> open, String openWords, double most, Figures figures)
        implements Drawing {
    public CurveChart {
        lines = List.copyOf(lines);
        open = List.copyOf(open);
    }

    /**
     * One curve.
     *
     * @param words what it is
     * @param points from left to right
     * @param look how it is drawn
     */
    public record Line(String words, List<Point> points, Look look) {
        public Line {
            points = List.copyOf(points);
        }
    }

    /**
     * @param ratio hours for each hour quoted
     * @param percent of jobs still on the bench
     */
    public record Point(double ratio, double percent) {}

    /** How a curve is drawn; told apart by dashes before colour. */
    public enum Look {
        JOBS,
        FINISHED_JOBS,
        MODEL,
        MODEL_OF_FINISHED
    }

    @Override
    public void layOn(TextFlow flow) {
        new CurveSheet(this, flow).lay();
    }

    /** Draws a {@link CurveChart}: curves and open jobs over a grid, the key below. */
    static final class CurveSheet {
        private static final int AXIS = 22;
        private static final int STEPS = 5;
        private final CurveChart chart;
        private final TextFlow flow;

        CurveSheet(CurveChart chart, TextFlow flow) {
            this.chart = chart;
            this.flow = flow;
        }

        void lay() {
            double height = flow.room() < 520 ? 210 : 260;
            double left = flow.margin();
            flow.text(
                    ChartFont.SMALL,
                    Palette.MUTED,
                    "percent of jobs still on the bench, after so many hours for each hour quoted");
            double y = flow.top();
            flow.part(
                    sheet -> plot().draw(sheet, new Rectangle2D.Double(left, y, flow.room(), height), null, null, null),
                    height + 6);
            flow.legend(keys());
        }

        private XYPlot plot() {
            XYPlot plot = Plots.plain(
                    Scale.axis(0, chart.most(), STEPS, chart.figures()), Scale.axis(0, 100, STEPS, chart.figures()));
            plot.setFixedDomainAxisSpace(Plots.space(6, AXIS, 0, 0));
            plot.setFixedRangeAxisSpace(Plots.space(0, 0, 34, 10));
            plot.setRangeGridlinesVisible(true);
            plot.setDomainGridlinesVisible(true);
            XYSeriesCollection open = new XYSeriesCollection(series("open", chart.open()));
            MarkRenderer marks = new MarkRenderer(MarkRenderer.Says.ITS_PLACE);
            marks.next(Mark.UNSOLD);
            plot.setDataset(0, open);
            plot.setRenderer(0, marks);
            lines(plot);
            return plot;
        }

        private void lines(XYPlot plot) {
            XYSeriesCollection data = new XYSeriesCollection();
            XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
            for (CurveChart.Line line : chart.lines()) {
                int place = data.getSeriesCount();
                renderer.setSeriesPaint(place, ink(line.look()).light());
                renderer.setSeriesStroke(place, stroke(line.look()));
                data.addSeries(series(place, line.points()));
            }
            plot.setDataset(1, data);
            plot.setRenderer(1, renderer);
        }

        private static XYSeries series(Comparable<?> name, List<CurveChart.Point> points) {
            XYSeries series = new XYSeries(name, false, true);
            points.forEach(point -> series.add(point.ratio(), point.percent(), false));
            return series;
        }

        private List<LegendEntry> keys() {
            List<LegendEntry> keys = new ArrayList<>();
            for (CurveChart.Line line : chart.lines()) {
                keys.add(LegendEntry.of(ink(line.look()), stroke(line.look()), line.words()));
            }
            keys.add(LegendEntry.of(Mark.UNSOLD, chart.openWords()));
            return keys;
        }

        private static Palette ink(CurveChart.Look look) {
            return switch (look) {
                case JOBS, FINISHED_JOBS -> Palette.TEXT;
                case MODEL, MODEL_OF_FINISHED -> Palette.PROPOSED;
            };
        }

        private static Stroke stroke(CurveChart.Look look) {
            return switch (look) {
                case JOBS, MODEL -> TextFlow.stroke(2);
                case FINISHED_JOBS -> TextFlow.stroke(1.5f, 2, 3);
                case MODEL_OF_FINISHED -> TextFlow.stroke(2, 8, 4);
            };
        }
    }
}
