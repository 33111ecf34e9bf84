package benchtrue.charts.drawing;

import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
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
        plot.setDomainGridlinePaint(Palette.GRID.light());
        plot.setDomainGridlineStroke(TextFlow.stroke(1));
        plot.setRangeGridlinePaint(Palette.GRID.light());
        plot.setRangeGridlineStroke(TextFlow.stroke(1));
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
}
