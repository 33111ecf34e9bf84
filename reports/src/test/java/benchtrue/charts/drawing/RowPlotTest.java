package benchtrue.charts.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.charts.Picture;
import benchtrue.charts.TextBoxes;
import benchtrue.format.Figures;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class RowPlotTest {
    private static final Figures FIGURES = Figures.of("en", "EUR");

    /** Lines stand alone or, painted alike, as stretches of one path. */
    private static long linesOfWidth(Drawing drawing, String width) throws Exception {
        Element root = TextBoxes.root(new Picture("test", "A finding", "A note.", drawing).svg());
        long alone = ofWidth(root, "line", width).count();
        long stretches = ofWidth(root, "path", width)
                .flatMap(path -> Stream.of(path.getAttribute("d").split("M")))
                .filter(stretch -> stretch.matches("[^A-Za-z]+L[^A-Za-z]+"))
                .count();
        return alone + stretches;
    }

    private static Stream<Element> ofWidth(Element root, String name, String width) {
        NodeList shapes = root.getElementsByTagName(name);
        return IntStream.range(0, shapes.getLength())
                .mapToObj(i -> (Element) shapes.item(i))
                .filter(shape -> width.equals(inherited(shape)));
    }

    private static String inherited(Element line) {
        String own = line.getAttribute("stroke-width");
        return own.isEmpty() ? ((Element) line.getParentNode()).getAttribute("stroke-width") : own;
    }

    private static RowChart chart(RowChart.Row... rows) {
        return new RowChart("hours", RowChart.Form.MARKS, 1, 0.05, List.of(rows), List.of(), FIGURES);
    }

    private static RowChart.Row row(double value, double lower, double upper) {
        return new RowChart.Row("refret", value, lower, upper, Mark.UNDER, "");
    }

    @Test
    void anIntervalHasItsLineAndBothItsEndsHoweverNarrow() throws Exception {
        assertThat(linesOfWidth(chart(row(1.2, 1.1, 1.4)), "1.75")).isEqualTo(3);
        assertThat(linesOfWidth(chart(row(1.2, 1.1999, 1.2001)), "1.75")).isEqualTo(3);
        assertThat(linesOfWidth(chart(row(1.2, 1.2, 1.2)), "1.75")).isEqualTo(3);
        assertThat(linesOfWidth(chart(row(1.2, 1.1, 40)), "1.75")).isEqualTo(3);
    }

    @Test
    void aFigureWithoutAnIntervalShowsNone() throws Exception {
        assertThat(linesOfWidth(chart(row(1.2, Double.NaN, Double.NaN)), "1.75"))
                .isZero();
    }

    @Test
    void aSingleJobHasNoInterval() throws Exception {
        List<JobChart.Job> jobs = IntStream.range(0, 30)
                .mapToObj(i -> new JobChart.Job(19_000 + i, 2 + i % 5, Mark.JOB_OVER))
                .toList();
        assertThat(linesOfWidth(new JobChart(jobs, List.of(), List.of(), 19_000, 19_030, FIGURES), "1.75"))
                .isZero();
    }
}
