package benchtrue.charts.drawing;

import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.Tick;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Draws a {@link JobChart}: points and stepped lines over a day axis, the key below. */
final class JobSheet {
    private static final int AXIS = 22;
    private static final Stroke TURN = TextFlow.stroke(1.5f, 2, 3);
    private final JobChart chart;
    private final TextFlow flow;
    private final double ceiling;

    JobSheet(JobChart chart, TextFlow flow) {
        this.chart = chart;
        this.flow = flow;
        ceiling = ceiling();
    }

    /** A few jobs far above the rest are drawn at the upper edge, so that the others stay readable. */
    private double ceiling() {
        double[] hours =
                chart.jobs().stream().mapToDouble(JobChart.Job::hours).sorted().toArray();
        double lines = chart.lines().stream()
                .flatMapToDouble(line -> java.util.Arrays.stream(line.hours()))
                .max()
                .orElse(0);
        double most = hours.length == 0 ? 1 : hours[hours.length - 1];
        double usual = hours.length == 0 ? 1 : hours[(int) ((hours.length - 1) * 0.95)];
        return Math.max(lines * 1.1, most > 2 * usual ? 1.25 * usual : 1.05 * most);
    }

    void lay() {
        double height = flow.room() < 520 ? 210 : 260;
        double left = flow.margin();
        flow.text(ChartFont.SMALL, Palette.MUTED, "hours a job");
        double y = flow.top();
        flow.part(
                sheet -> plot().draw(sheet, new Rectangle2D.Double(left, y, flow.room(), height), null, null, null),
                height + 6);
        flow.legend(keys());
    }

    private XYPlot plot() {
        NumberAxis hours = Scale.axis(0, ceiling, 5, chart.figures());
        XYPlot plot = Plots.plain(new DayAxis(chart.from(), chart.to()), hours);
        plot.setFixedDomainAxisSpace(Plots.space(6, AXIS, 0, 0));
        plot.setFixedRangeAxisSpace(Plots.space(0, 0, 34, 4));
        plot.setRangeGridlinesVisible(true);
        for (JobChart.Turn turn : chart.turns()) {
            plot.addDomainMarker(new ValueMarker(turn.day(), Palette.UNDER.light(), TURN), Layer.BACKGROUND);
        }
        points(plot);
        lines(plot);
        return plot;
    }

    private void points(XYPlot plot) {
        Map<Mark, XYSeries> series = new EnumMap<>(Mark.class);
        for (JobChart.Job job : chart.jobs()) {
            series.computeIfAbsent(job.mark(), mark -> new XYSeries(mark, false, true))
                    .add(job.day(), Math.min(job.hours(), ceiling), false);
        }
        XYSeriesCollection data = new XYSeriesCollection();
        MarkRenderer renderer = new MarkRenderer(MarkRenderer.Says.ITS_PLACE);
        series.forEach((mark, points) -> {
            renderer.next(mark);
            data.addSeries(points);
        });
        plot.setDataset(0, data);
        plot.setRenderer(0, renderer);
    }

    private void lines(XYPlot plot) {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        for (JobChart.Line line : chart.lines()) {
            int place = data.getSeriesCount();
            renderer.setSeriesPaint(place, ink(line.look()).light());
            renderer.setSeriesStroke(place, stroke(line.look()));
            data.addSeries(steps(line, place));
        }
        plot.setDataset(1, data);
        plot.setRenderer(1, renderer);
    }

    private XYSeries steps(JobChart.Line line, int name) {
        XYSeries steps = new XYSeries(name, false, true);
        for (int i = 0; i < line.days().length; i++) {
            int until = i + 1 < line.days().length ? line.days()[i + 1] : chart.to();
            if (until <= chart.from()) {
                continue;
            }
            steps.add(Math.max(line.days()[i], chart.from()), line.hours()[i], false);
            steps.add(until, line.hours()[i], false);
        }
        return steps;
    }

    private List<LegendEntry> keys() {
        List<LegendEntry> keys = new ArrayList<>();
        for (JobChart.Line line : chart.lines()) {
            keys.add(LegendEntry.of(ink(line.look()), stroke(line.look()), line.words()));
        }
        chart.turns().forEach(turn -> keys.add(LegendEntry.of(Palette.UNDER, TURN, turn.words())));
        EnumSet<Mark> marks = EnumSet.noneOf(Mark.class);
        chart.jobs().forEach(job -> marks.add(job.mark()));
        marks.forEach(mark -> keys.add(LegendEntry.of(mark, mark.words())));
        long above = chart.jobs().stream().filter(job -> job.hours() > ceiling).count();
        if (above > 0) {
            keys.add(new LegendEntry(
                    chart.figures().count(above) + " above " + chart.figures().hours(ceiling)
                            + ", drawn at the upper edge",
                    sheet -> {}));
        }
        return keys;
    }

    private static Palette ink(JobChart.Look look) {
        return switch (look) {
            case BOOK -> Palette.TEXT;
            case PROPOSED -> Palette.PROPOSED;
        };
    }

    private static Stroke stroke(JobChart.Look look) {
        return switch (look) {
            case BOOK -> TextFlow.stroke(2);
            case PROPOSED -> TextFlow.stroke(2.5f, 8, 4);
        };
    }

    /** An axis of days counted from 1970-01-01, marked at the beginning of years, or of quarters within a short span. */
    static final class DayAxis extends NumberAxis {
        private static final long serialVersionUID = 1;
        private static final int SHORT = 550;
        private static final String[] QUARTERS = {"Jan", "Apr", "Jul", "Oct"};

        DayAxis(int first, int last) {
            super(null);
            setAutoRange(false);
            double air = Math.max(10, (last - first) * 0.02);
            setRange(first - air, last + air);
            setTickLabelFont(ChartFont.SMALL.font());
            setTickLabelPaint(Palette.MUTED.light());
            setAxisLinePaint(Palette.MUTED.light());
            setAxisLineStroke(TextFlow.stroke(1));
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
                    double half = ChartFont.SMALL.width(label) / 2;
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
}
