package benchtrue.charts;

import java.util.List;

/**
 * Many small panels side by side, all on the same axes: half-years across, hours per quoted hour up, from half to double.
 *
 * @param panels in the order of reading
 * @param from first day of all panels
 * @param to last day
 * @param tolerance how far from 1 still counts as on the mark
 */
record PanelChart(List<Panel> panels, int from, int to, double tolerance) implements Drawing {
    PanelChart {
        panels = List.copyOf(panels);
    }

    /**
     * One repair type.
     *
     * @param label what it is called
     * @param points one a half-year with enough jobs, oldest first
     */
    record Panel(String label, List<Point> points) {}

    /**
     * @param day middle of the half-year
     * @param load hours taken over hours quoted
     */
    record Point(int day, double load) {}

    @Override
    public void layOn(Flow flow) {
        new PanelSheet(this, flow).lay();
    }
}
