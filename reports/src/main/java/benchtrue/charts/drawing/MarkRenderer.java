package benchtrue.charts.drawing;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.entity.EntityCollection;
import org.jfree.chart.plot.CrosshairState;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.data.xy.IntervalXYDataset;
import org.jfree.data.xy.XYDataset;

/** Draws each series as a mark, with a line along its interval where it has one. */
final class MarkRenderer extends XYErrorRenderer {
    private static final long serialVersionUID = 1;
    private final transient List<Mark> marks = new ArrayList<>();

    /** What a mark says beside its place. */
    enum Says {
        ITS_PLACE,
        /** Its interval too, with a cap at each end. */
        ITS_INTERVAL
    }

    MarkRenderer(Says says) {
        // JFreeChart gives every plain series intervals of its own making, which nobody measured.
        setDrawXError(says == Says.ITS_INTERVAL);
        setDrawYError(false);
        setCapLength(6);
        setErrorStroke(TextFlow.stroke(1.75f));
    }

    /** Says what the next series stands for. */
    void next(Mark mark) {
        setSeriesPaint(marks.size(), mark.ink().light());
        marks.add(mark);
    }

    /** The library draws an unknown interval at no place at all; here it is left out. */
    @Override
    public void drawItem(
            Graphics2D sheet,
            XYItemRendererState state,
            Rectangle2D area,
            PlotRenderingInfo info,
            XYPlot plot,
            ValueAxis across,
            ValueAxis up,
            XYDataset data,
            int series,
            int item,
            CrosshairState crosshair,
            int pass) {
        boolean interval = pass == 0;
        if (interval && Double.isNaN(((IntervalXYDataset) data).getStartXValue(series, item))) {
            return;
        }
        super.drawItem(sheet, state, area, info, plot, across, up, data, series, item, crosshair, pass);
    }

    @Override
    protected void drawSecondaryPass(
            Graphics2D sheet,
            XYPlot plot,
            XYDataset data,
            int pass,
            int series,
            int item,
            ValueAxis across,
            Rectangle2D area,
            ValueAxis up,
            CrosshairState crosshair,
            EntityCollection entities) {
        if (marks.get(series) == Mark.NONE) {
            return;
        }
        double x = across.valueToJava2D(data.getXValue(series, item), area, plot.getDomainAxisEdge());
        double y = up.valueToJava2D(data.getYValue(series, item), area, plot.getRangeAxisEdge());
        if (!Double.isNaN(x) && !Double.isNaN(y)) {
            marks.get(series).paint(sheet, x, y);
        }
    }
}
