package benchtrue.charts;

import benchtrue.charts.drawing.CurveChart;
import benchtrue.findings.BenchCurve;
import benchtrue.findings.UsualJob;
import benchtrue.statistics.KaplanMeier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** What jobs still on the bench say about how long the job usually takes: the repair type that they change most. */
final class StillOnTheBench {
    private static final int POINTS = 120;
    /** Steps lower than this, in percent, are drawn together. */
    private static final double LEAST_STEP = 0.2;

    private static final double PERCENT = 100;
    private final ChartContext subject;

    StillOnTheBench(ChartContext subject) {
        this.subject = subject;
    }

    /** Returns the picture; empty where no open job says anything yet. */
    Optional<Picture> picture() {
        return subject.review().findings().benchCurves().stream().findFirst().map(this::draw);
    }

    private Picture draw(BenchCurve curve) {
        double most = most(curve);
        CurveChart chart = new CurveChart(
                List.of(
                        new CurveChart.Line(
                                "finished jobs alone",
                                steps(curve.finishedOnly(), most),
                                CurveChart.Look.FINISHED_JOBS),
                        new CurveChart.Line(
                                "with those still on the bench", steps(curve.withOpen(), most), CurveChart.Look.JOBS),
                        new CurveChart.Line(
                                "usual course, finished jobs alone",
                                smooth(curve::modelledWithoutOpen, most),
                                CurveChart.Look.MODEL_OF_FINISHED),
                        new CurveChart.Line(
                                "usual course, with those still on the bench",
                                smooth(curve::modelled, most),
                                CurveChart.Look.MODEL)),
                Arrays.stream(curve.openSoFar())
                        .filter(soFar -> soFar <= most)
                        .mapToObj(soFar -> point(soFar, curve.withOpen().survivalAt(soFar)))
                        .toList(),
                "still on the bench, at its hours so far",
                most,
                subject.figures());
        return new Picture("still-on-the-bench", title(curve.usual()), note(curve.usual()), chart);
    }

    private String title(UsualJob usual) {
        String with = subject.figures().ratio(usual.typical());
        String without = subject.figures().ratio(usual.withoutOpen());
        String open =
                usual.openUsed() == 1 ? "the one" : "the " + subject.figures().count(usual.openUsed());
        return subject.label(usual.repairType()) + ": half of the jobs take more than " + with
                + " hours for each hour quoted; "
                + (with.equals(without)
                        ? open + " still on the bench" + (usual.openUsed() == 1 ? " does" : " do") + " not change that"
                        : "without " + open + " still on the bench it would look like " + without);
    }

    private String note(UsualJob usual) {
        return subject.count(usual.jobs(), "finished job", "finished jobs") + " with hours of their own and "
                + subject.count(usual.openUsed(), "open one", "open ones")
                + " in work; an open job takes at least its hours so far. Steps: these jobs as they went. Smooth: the usual"
                + " course with this shop's people, instruments and quotes, leaning on similar repairs."
                + (usual.openLeftOut() == 0
                        ? ""
                        : " " + subject.count(usual.openLeftOut(), "other open job says", "other open jobs say")
                                + " nothing yet: idle, waiting, or logged with the ticket as a whole.");
    }

    /** A few jobs far beyond the rest would squeeze the others to the left. */
    private static double most(BenchCurve curve) {
        KaplanMeier finished = curve.finishedOnly();
        double longest = finished.time(finished.steps() - 1);
        double open = curve.openSoFar()[curve.openSoFar().length - 1];
        double usual = 3 * StrictMath.max(1, curve.usual().typical());
        return 1.05 * StrictMath.min(usual, StrictMath.max(1.2, StrictMath.max(longest, open)));
    }

    private static List<CurveChart.Point> steps(KaplanMeier curve, double most) {
        List<CurveChart.Point> points = new ArrayList<>();
        double height = 1;
        points.add(point(0, height));
        for (int step = 0; step < curve.steps() && curve.time(step) <= most; step++) {
            boolean last = step + 1 == curve.steps();
            if (last || PERCENT * (height - curve.survival(step)) >= LEAST_STEP) {
                points.add(point(curve.time(step), height));
                height = curve.survival(step);
                points.add(point(curve.time(step), height));
            }
        }
        points.add(point(most, height));
        return points;
    }

    private static List<CurveChart.Point> smooth(DoubleUnaryOperator share, double most) {
        List<CurveChart.Point> points = new ArrayList<>();
        points.add(point(0, 1));
        for (int i = 1; i <= POINTS; i++) {
            double ratio = most * i / POINTS;
            points.add(point(ratio, share.applyAsDouble(ratio)));
        }
        return points;
    }

    private static CurveChart.Point point(double ratio, double share) {
        return new CurveChart.Point(ratio, PERCENT * share);
    }
}
