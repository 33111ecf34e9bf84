package benchtrue.charts;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.charts.drawing.CurveChart;
import benchtrue.charts.drawing.Drawing;
import benchtrue.charts.drawing.JobChart;
import benchtrue.charts.drawing.LegendEntry;
import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.PanelChart;
import benchtrue.charts.drawing.RowChart;
import benchtrue.findings.Cause;
import benchtrue.format.Figures;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pictures of fixed figures against their stored SVG, which is the same on every JDK. After a wanted change:
 * {@code mvn -pl reports -am test -Dtest=GoldenPicturesTest -Dpictures.update=true}, then look at each.
 */
class GoldenPicturesTest {
    private static final Path STORED = Path.of("src/test/resources/benchtrue/charts/golden");
    private static final Figures FIGURES = Figures.of("de", "EUR");

    static Stream<Arguments> pictures() {
        return Stream.of(
                Arguments.of("marks", marks()),
                Arguments.of("cause", cause()),
                Arguments.of("bars", bars()),
                Arguments.of("changes", changes()),
                Arguments.of("jobs", jobs()),
                Arguments.of("curves", curves()),
                Arguments.of("panels", panels()));
    }

    private static RowChart marks() {
        Mark[] marks = {
            Mark.UNDER, Mark.LEANING_UNDER, Mark.ON_THE_MARK, Mark.LEANING_OVER, Mark.OVER, Mark.TOO_FEW, Mark.UNDER
        };
        double[] values = {1.4, 1.15, 1.01, 0.92, 0.7, 1.3, 1.2};
        List<RowChart.Row> rows = IntStream.range(0, marks.length)
                .mapToObj(i -> new RowChart.Row(
                        "repair " + (char) ('A' + i),
                        values[i],
                        marks[i] == Mark.TOO_FEW ? Double.NaN : values[i] - 0.1,
                        marks[i] == Mark.TOO_FEW ? Double.NaN : i == 6 ? 9 : values[i] + 0.12,
                        marks[i],
                        FIGURES.hours(values[i] * 9)))
                .toList();
        List<LegendEntry> keys = Arrays.stream(marks)
                .distinct()
                .map(mark -> LegendEntry.of(mark, mark.words()))
                .toList();
        return new RowChart("hours for each hour quoted", RowChart.Form.MARKS, 1, 0.05, rows, keys, FIGURES);
    }

    /** Banjos among the nuts: their own group first, the other classes greyed. */
    private static RowChart cause() {
        List<Cause.Group> groups = List.of(
                new Cause.Group("on banjo instruments", 24, 2.11, 1.9, 2.34),
                new Cause.Group("on flat top instruments", 62, 1.03, 0.98, 1.08),
                new Cause.Group("on arch top instruments", 11, 0.96, 0.83, 1.11),
                new Cause.Group("on solid body instruments", 4, 1.4, 0.7, 2.8));
        Cause banjos = new Cause(
                0,
                Cause.Kind.INSTRUMENT_CLASS,
                "banjo",
                "on banjo instruments",
                24,
                101,
                2.02,
                1.8,
                2.3,
                2.11,
                1.9,
                2.34,
                0.001,
                0,
                0,
                0,
                "",
                groups);
        return JobsByCause.drawing(banjos, FIGURES);
    }

    private static RowChart changes() {
        List<RowChart.Row> rows = List.of(
                new RowChart.Row("nearer", 1.4, 1.1, 1.0, 1.2, Mark.PLAIN, "12 and 9 jobs"),
                new RowChart.Row("further", 0.9, 0.7, 0.6, 0.8, Mark.PLAIN, "8 and 8 jobs"),
                new RowChart.Row("no job before", Double.NaN, 1.3, 1.1, 1.6, Mark.PLAIN, "0 and 8 jobs"),
                new RowChart.Row("one job since", 1.2, 1.6, Double.NaN, Double.NaN, Mark.PLAIN, "9 and 1 job"));
        List<LegendEntry> keys = List.of(LegendEntry.of(Mark.BEFORE, "before"), LegendEntry.of(Mark.PLAIN, "since"));
        return new RowChart("hours for each book hour", RowChart.Form.CHANGES, 1, 0.05, rows, keys, FIGURES);
    }

    private static RowChart bars() {
        List<RowChart.Row> rows = List.of(
                new RowChart.Row("whole", 4_000, 3_200, 5_100, Mark.UNDER, FIGURES.moneyRange(32_000_000, 51_000_000)),
                new RowChart.Row("a step up", 4_000, 5_500, Double.NaN, Double.NaN, Mark.OVER, "+1.500"),
                new RowChart.Row("a step down", 5_500, -700, Double.NaN, Double.NaN, Mark.LEANING_UNDER, "-6.200"),
                new RowChart.Row("nothing known", Double.NaN, Mark.PLAIN, Figures.UNKNOWN));
        List<LegendEntry> keys = List.of(LegendEntry.bar(Mark.OVER, "raised"), LegendEntry.bar(Mark.UNDER, "lowered"));
        return new RowChart("EUR a year", RowChart.Form.BARS, Double.NaN, 0, rows, keys, FIGURES);
    }

    private static JobChart jobs() {
        Mark[] marks = {Mark.JOB_OVER, Mark.JOB_WITHIN, Mark.SHARE_OVER, Mark.SHARE_WITHIN};
        List<JobChart.Job> jobs = IntStream.range(0, 24)
                .mapToObj(i -> new JobChart.Job(19_000 + 40 * i, i == 20 ? 60 : 8 + (i * 7) % 5 - i % 2, marks[i % 4]))
                .toList();
        List<JobChart.Line> lines = List.of(
                new JobChart.Line(
                        "book", new int[] {Integer.MIN_VALUE, 19_400}, new double[] {8, 9}, JobChart.Look.BOOK),
                new JobChart.Line(
                        "proposed", new int[] {Integer.MIN_VALUE}, new double[] {10.25}, JobChart.Look.PROPOSED));
        return new JobChart(jobs, lines, List.of(new JobChart.Turn(19_600, "slower since")), 19_000, 20_000, FIGURES);
    }

    private static CurveChart curves() {
        List<CurveChart.Line> lines = Arrays.stream(CurveChart.Look.values())
                .map(look -> new CurveChart.Line(
                        look.name(),
                        IntStream.range(0, 10)
                                .mapToObj(i -> new CurveChart.Point(
                                        0.2 * i * (1 + 0.1 * look.ordinal()), 100 - 5.0 * i - 1.0 / 2 * i * i))
                                .toList(),
                        look))
                .toList();
        return new CurveChart(
                lines,
                List.of(new CurveChart.Point(0.5, 80), new CurveChart.Point(1.7, 30)),
                "still there",
                2,
                FIGURES);
    }

    private static PanelChart panels() {
        List<PanelChart.Panel> panels = IntStream.range(0, 6)
                .mapToObj(i -> new PanelChart.Panel(
                        "repair " + (char) ('A' + i),
                        IntStream.range(0, i)
                                .mapToObj(h -> new PanelChart.Point(19_000 + 180 * h, 0.6 + 0.3 * h))
                                .toList()))
                .toList();
        return new PanelChart(panels, 18_900, 20_000, 0.05);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void aPictureIsDrawnAsItIsStored(String name, Drawing drawing) throws IOException {
        Picture picture = new Picture(name, "A finding: " + name, "12 jobs, 90\u00a0% interval.", drawing);
        check(name + ".svg", picture.svg());
        check(name + "-narrow.svg", picture.figure(Picture.Sheet.NARROW));
    }

    private static void check(String name, String svg) throws IOException {
        Path file = STORED.resolve(name);
        if (Boolean.getBoolean("pictures.update")) {
            Files.createDirectories(STORED);
            Files.write(file, svg.getBytes(StandardCharsets.UTF_8));
        }
        assertThat(svg).isEqualTo(Files.readString(file));
    }
}
