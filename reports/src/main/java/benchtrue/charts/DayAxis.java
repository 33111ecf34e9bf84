package benchtrue.charts;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.Tick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** An axis of days counted from 1970-01-01, marked at the beginning of years, or of quarters within a short span. */
final class DayAxis extends NumberAxis {
    private static final long serialVersionUID = 1;
    private static final int SHORT = 550;
    private static final String[] QUARTERS = {"Jan", "Apr", "Jul", "Oct"};

    DayAxis(int first, int last) {
        super(null);
        setAutoRange(false);
        double air = Math.max(10, (last - first) * 0.02);
        setRange(first - air, last + air);
        setTickLabelFont(Face.SMALL.font());
        setTickLabelPaint(Ink.MUTED.light());
        setAxisLinePaint(Ink.MUTED.light());
        setAxisLineStroke(Flow.stroke(1));
        setTickMarksVisible(false);
    }

    @Override
    public List<Tick> refreshTicks(
            Graphics2D sheet, org.jfree.chart.axis.AxisState state, Rectangle2D area, RectangleEdge edge) {
        List<Tick> ticks = new ArrayList<>();
        boolean quarters = getRange().getLength() < SHORT;
        int year = LocalDate.ofEpochDay((long) getRange().getLowerBound()).getYear();
        int last = LocalDate.ofEpochDay((long) getRange().getUpperBound()).getYear();
        double free = Double.NEGATIVE_INFINITY;
        for (; year <= last; year++) {
            for (int quarter = 0; quarter < (quarters ? 4 : 1); quarter++) {
                double day = LocalDate.of(year, 1 + 3 * quarter, 1).toEpochDay();
                String label = quarters ? QUARTERS[quarter] + " " + year : Integer.toString(year);
                double half = Face.SMALL.width(label) / 2;
                double x = valueToJava2D(day, area, edge);
                boolean fits = x - half >= free && x - half >= area.getMinX() && x + half <= area.getMaxX();
                if (getRange().contains(day)) {
                    ticks.add(new NumberTick(day, fits ? label : "", TextAnchor.TOP_CENTER, TextAnchor.CENTER, 0));
                    free = fits ? x + half + 6 : free;
                }
            }
        }
        return ticks;
    }
}
