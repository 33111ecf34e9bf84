package benchtrue.charts;

import benchtrue.shop.Figures;
import java.util.List;

/**
 * Falling curves of how many jobs, in percent, are still on the bench after so many hours for each hour quoted.
 *
 * @param lines curves, drawn in this order
 * @param open hours so far and height of each job still on the bench
 * @param openWords what stands for such a job
 * @param most hours for each hour quoted at the right edge
 * @param figures how numbers are written
 */
record CurveChart(List<Line> lines, List<Point> open, String openWords, double most, Figures figures)
        implements Drawing {
    CurveChart {
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
    record Line(String words, List<Point> points, Look look) {
        Line {
            points = List.copyOf(points);
        }
    }

    /**
     * @param ratio hours for each hour quoted
     * @param percent of jobs still on the bench
     */
    record Point(double ratio, double percent) {}

    /** How a curve is drawn; told apart by dashes before colour. */
    enum Look {
        JOBS,
        FINISHED_JOBS,
        MODEL,
        MODEL_OF_FINISHED
    }

    @Override
    public void layOn(Flow flow) {
        new CurveSheet(this, flow).lay();
    }
}
