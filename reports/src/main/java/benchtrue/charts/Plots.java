package benchtrue.charts;

import java.awt.Color;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleInsets;

/** Plots and renderers without any of the library's own decoration. */
final class Plots {
    private Plots() {}

    /** Returns a plot without background, outline or grid. */
    static XYPlot plain(ValueAxis across, ValueAxis up) {
        XYPlot plot = new XYPlot(null, across, up, null);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setDomainGridlinePaint(Ink.GRID.light());
        plot.setDomainGridlineStroke(Flow.stroke(1));
        plot.setRangeGridlinePaint(Ink.GRID.light());
        plot.setRangeGridlineStroke(Flow.stroke(1));
        return plot;
    }

    static AxisSpace space(double top, double bottom, double left, double right) {
        AxisSpace space = new AxisSpace();
        space.setTop(top);
        space.setBottom(bottom);
        space.setLeft(left);
        space.setRight(right);
        return space;
    }

    /** Returns a renderer of marks with a line along their interval. */
    static XYErrorRenderer intervals() {
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setDrawXError(true);
        renderer.setDrawYError(false);
        renderer.setCapLength(6);
        renderer.setErrorStroke(Flow.stroke(1.75f));
        renderer.setUseFillPaint(true);
        renderer.setUseOutlinePaint(true);
        return renderer;
    }

    /** Gives a series the look of a mark. */
    static void style(XYLineAndShapeRenderer renderer, int series, Mark mark) {
        Color ink = mark.ink().light();
        renderer.setSeriesPaint(series, ink);
        renderer.setSeriesOutlinePaint(series, ink);
        renderer.setSeriesOutlineStroke(series, Flow.stroke(1.5f));
        renderer.setSeriesFillPaint(series, mark.filling() == Mark.Filling.FULL ? ink : Ink.PAPER.light());
        renderer.setSeriesShape(series, mark.shape());
    }

    /** Leaves of a series its interval only, for bars that show the value themselves. */
    static void intervalOnly(XYErrorRenderer renderer, int series) {
        renderer.setSeriesPaint(series, Ink.TEXT.light());
        renderer.setSeriesShapesVisible(series, false);
    }
}
