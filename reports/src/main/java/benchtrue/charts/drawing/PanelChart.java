package benchtrue.charts.drawing;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Many small panels side by side, all on the same axes: half-years across, hours per quoted hour up, from half to double.
 *
 * @param panels in the order of reading
 * @param from first day of all panels
 * @param to last day
 * @param tolerance how far from 1 still counts as on the mark
 */
public record PanelChart(List<Panel> panels, int from, int to, double tolerance) implements Drawing {
    public PanelChart {
        panels = List.copyOf(panels);
    }

    /**
     * One repair type.
     *
     * @param label what it is called
     * @param points one a half-year with enough jobs, oldest first
     */
    public record Panel(String label, List<Point> points) {}

    /**
     * @param day middle of the half-year
     * @param load hours taken over hours quoted
     */
    public record Point(int day, double load) {}

    @Override
    public void layOn(TextFlow flow) {
        new PanelSheet(this, flow).lay();
    }

    /** Lays the panels of a {@link PanelChart} out in rows; labels wrap above their panel. */
    static final class PanelSheet {
        private static final int LEAST_WIDTH = 140;
        private static final int HEIGHT = 52;
        private static final int GAP = 14;
        private final PanelChart chart;
        private final TextFlow flow;
        private final int columns;
        private final double width;

        PanelSheet(PanelChart chart, TextFlow flow) {
            this.chart = chart;
            this.flow = flow;
            columns = Math.max(1, (int) ((flow.room() + GAP) / (LEAST_WIDTH + GAP)));
            width = (flow.room() - (columns - 1) * GAP) / columns;
        }

        void lay() {
            for (int first = 0; first < chart.panels().size(); first += columns) {
                row(chart.panels()
                        .subList(first, Math.min(first + columns, chart.panels().size())));
            }
            flow.legend(List.of(
                    LegendEntry.of(Mark.JOB_OVER, "half-year above the quote"),
                    LegendEntry.of(Mark.SMALL, "about as quoted"),
                    LegendEntry.of(Mark.JOB_WITHIN, "below the quote"),
                    LegendEntry.of(Palette.TEXT, TextFlow.stroke(1), "as quoted; panels reach from half to double")));
        }

        private void row(List<PanelChart.Panel> panels) {
            int lines = panels.stream()
                    .mapToInt(
                            panel -> ChartFont.SMALL.wrap(panel.label(), width).size())
                    .max()
                    .orElse(0);
            double top = flow.top() + lines * ChartFont.SMALL.lineHeight() + 3;
            for (int i = 0; i < panels.size(); i++) {
                double left = flow.margin() + i * (width + GAP);
                List<String> label = ChartFont.SMALL.wrap(panels.get(i).label(), width);
                double y = top - 3 - label.size() * ChartFont.SMALL.lineHeight();
                for (String line : label) {
                    flow.part(
                            TextFlow.words(ChartFont.SMALL, Palette.TEXT, left, y + ChartFont.SMALL.ascent(), line), 0);
                    y += ChartFont.SMALL.lineHeight();
                }
                PanelChart.Panel panel = panels.get(i);
                flow.part(sheet -> panel(sheet, panel, left, top), 0);
            }
            flow.gap(lines * ChartFont.SMALL.lineHeight() + 3 + HEIGHT + GAP);
        }

        private void panel(java.awt.Graphics2D sheet, PanelChart.Panel panel, double left, double top) {
            double upper = y(1 + chart.tolerance(), top);
            sheet.setColor(Palette.BAND.light());
            sheet.fill(new Rectangle2D.Double(left, upper, width, y(1 - chart.tolerance(), top) - upper));
            sheet.setStroke(TextFlow.stroke(1));
            sheet.setColor(Palette.GRID.light());
            sheet.draw(new Rectangle2D.Double(left, top, width, HEIGHT));
            sheet.setColor(Palette.TEXT.light());
            sheet.draw(new Line2D.Double(left, y(1, top), left + width, y(1, top)));
            if (panel.points().isEmpty()) {
                return;
            }
            Path2D path = new Path2D.Double();
            for (PanelChart.Point point : panel.points()) {
                if (path.getCurrentPoint() == null) {
                    path.moveTo(x(point.day(), left), y(point.load(), top));
                } else {
                    path.lineTo(x(point.day(), left), y(point.load(), top));
                }
            }
            sheet.setColor(Palette.NEUTRAL.light());
            sheet.draw(path);
            panel.points()
                    .forEach(point -> mark(point.load()).paint(sheet, x(point.day(), left), y(point.load(), top)));
        }

        private Mark mark(double load) {
            return load > 1 + chart.tolerance()
                    ? Mark.JOB_OVER
                    : load < 1 - chart.tolerance() ? Mark.JOB_WITHIN : Mark.SMALL;
        }

        private double x(int day, double left) {
            double air = 6;
            return left + air + (width - 2 * air) * (day - chart.from()) / Math.max(1.0, chart.to() - chart.from());
        }

        /** Equal ratios are equally far apart; what is beyond half or double stands at the edge. */
        private double y(double load, double top) {
            double share = StrictMath.log(Math.max(0.5, Math.min(2, load))) / StrictMath.log(2);
            return top + HEIGHT * (1 - share) / 2;
        }
    }
}
