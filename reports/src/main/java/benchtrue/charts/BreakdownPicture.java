package benchtrue.charts;

import benchtrue.breakdown.Breakdown;
import benchtrue.breakdown.Figure;
import benchtrue.breakdown.Measure;
import benchtrue.charts.drawing.ChartFont;
import benchtrue.charts.drawing.LegendEntry;
import benchtrue.charts.drawing.Mark;
import benchtrue.charts.drawing.RowChart;
import benchtrue.format.Figures;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;

/** The rows of a breakdown as a picture of one of their figures: load with its range where it is shown, else the first. */
public final class BreakdownPicture {
    private static final int MOST_ROWS = 30;
    private static final double TAIL = 0.05;

    /** The standard normal's upper 5 % point. */
    private static final double SURELY = 1.645;

    private final Breakdown answer;
    private final Figures figures;
    private final int figure;
    private final int range;

    private BreakdownPicture(Breakdown answer, Figures figures) {
        this.answer = answer;
        this.figures = figures;
        figure = Math.max(place(Measure.LOAD), first());
        range = figure == place(Measure.LOAD) ? place(Measure.RANGE) : -1;
    }

    /** Returns the picture of a breakdown that has rows. */
    public static Picture of(String name, Breakdown answer, Figures figures) {
        return new BreakdownPicture(answer, figures).picture(name);
    }

    /** Returns the picture as the text of an SVG file. */
    public static byte[] svg(Breakdown answer, Figures figures) {
        return of("breakdown", answer, figures).svg().getBytes(StandardCharsets.UTF_8);
    }

    /** The place of a figure over all that stands across; -1 where it is not shown. */
    private int place(Measure measure) {
        return answer.columns().indexOf(new Breakdown.Column("", measure));
    }

    private int first() {
        return IntStream.range(0, answer.columns().size())
                .filter(column -> answer.columns().get(column).across().isEmpty())
                .findFirst()
                .orElse(0);
    }

    private Picture picture(String name) {
        Measure measure = answer.columns().get(figure).measure();
        boolean load = measure == Measure.LOAD;
        return new Picture(
                name,
                shown(answer.title()) + ": " + finding(),
                String.join(
                                " ",
                                answer.notes().stream()
                                        .map(BreakdownPicture::shown)
                                        .toList())
                        + beyond(),
                new RowChart(
                        measure.heading() + unit(measure),
                        load ? RowChart.Form.MARKS : RowChart.Form.BARS,
                        load ? 1 : Double.NaN,
                        0,
                        answer.rows().stream().limit(MOST_ROWS).map(this::row).toList(),
                        load ? keys() : List.of(),
                        figures));
    }

    private static String unit(Measure measure) {
        return switch (measure) {
            case QUOTED, TAKEN, REWORK, EACH -> ", h";
            default -> "";
        };
    }

    private String beyond() {
        int rest = answer.rows().size() - MOST_ROWS;
        return rest > 0
                ? " The first " + MOST_ROWS + " of "
                        + figures.count(answer.rows().size()) + " rows."
                : "";
    }

    /** The finding: which rows lie beyond their ranges, else which stands out. */
    private String finding() {
        if (range >= 0) {
            List<Breakdown.Row> over = answer.rows().stream()
                    .filter(row -> row.figures().get(range).low() > 1)
                    .toList();
            return told(over);
        }
        return answer.rows().stream()
                .filter(row -> !Double.isNaN(row.figures().get(figure).value()))
                .reduce((a, b) -> b.figures().get(figure).value()
                                > a.figures().get(figure).value()
                        ? b
                        : a)
                .map(row -> "most with " + shown(row.label()) + ", "
                        + row.figures().get(figure).text(figures))
                .orElse("no figure is known");
    }

    /** Of many ranges one in twenty lies above 1 by chance; a finding is told where more do than chance would bring. */
    private String told(List<Breakdown.Row> over) {
        long ranges = answer.rows().stream()
                .filter(row -> !Double.isNaN(row.figures().get(range).low()))
                .count();
        double chance = TAIL * ranges + SURELY * StrictMath.sqrt(ranges * TAIL * (1 - TAIL));
        if (over.isEmpty()) {
            return "none surely takes longer than quoted";
        }
        String which = over.size() == 1
                ? shown(over.get(0).label())
                : figures.count(over.size()) + " of " + figures.count(ranges);
        String take = over.size() == 1 ? " takes" : " take";
        return over.size() > chance
                ? which + take + " longer than quoted"
                : which + take + " longer than quoted, no more than chance would show";
    }

    private RowChart.Row row(Breakdown.Row row) {
        Figure value = row.figures().get(figure);
        Figure ends = range < 0 ? null : row.figures().get(range);
        return new RowChart.Row(
                shown(row.label()),
                value.value(),
                ends == null ? Double.NaN : ends.low(),
                ends == null ? Double.NaN : ends.high(),
                mark(ends),
                value.text(figures) + (ends == null ? "" : "; " + ends.text(figures)));
    }

    private static Mark mark(Figure ends) {
        if (ends == null) {
            return Mark.PLAIN;
        }
        return Double.isNaN(ends.low())
                ? Mark.TOO_FEW
                : ends.low() > 1 ? Mark.UNDER : ends.high() < 1 ? Mark.OVER : Mark.ON_THE_MARK;
    }

    private static List<LegendEntry> keys() {
        return List.of(
                LegendEntry.of(Mark.UNDER, "longer than quoted, beyond its range"),
                LegendEntry.of(Mark.ON_THE_MARK, "may be as quoted"),
                LegendEntry.of(Mark.OVER, "shorter, beyond its range"),
                LegendEntry.of(Mark.TOO_FEW, "nothing can be told"));
    }

    /** Letters that the pictures' font lacks become question marks; the tables have them. */
    private static String shown(String text) {
        return ChartFont.shows(text)
                ? text
                : text.codePoints()
                        .mapToObj(Character::toString)
                        .map(letter -> ChartFont.shows(letter) ? letter : "?")
                        .reduce("", String::concat);
    }
}
