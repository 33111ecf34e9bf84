package benchtrue.charts.drawing;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Places the rows of a {@link RowChart}: on a wide sheet the label left, the mark in the middle, the note right; on a narrow
 * one label and note above the mark. Labels wrap; none is cut.
 */
final class RowSheet {
    private static final int NARROW = 520;
    private static final int AXIS = 22;
    private static final int GAP = 14;
    private static final int BAND = 20;
    private final RowChart chart;
    private final TextFlow flow;
    private final double left;
    private final double right;
    private final double labelWidth;
    private final double noteWidth;
    private final boolean narrow;

    RowSheet(RowChart chart, TextFlow flow) {
        this.chart = chart;
        this.flow = flow;
        narrow = flow.room() < NARROW;
        double widestNote = chart.rows().stream()
                .mapToDouble(row -> ChartFont.SMALL.width(row.note()))
                .max()
                .orElse(0);
        double widestLabel = chart.rows().stream()
                .mapToDouble(row -> ChartFont.TEXT.width(row.label()))
                .max()
                .orElse(0);
        noteWidth = narrow ? flow.room() : Math.min(widestNote, flow.room() * 0.28) + 1;
        labelWidth = narrow ? flow.room() : Math.min(widestLabel, flow.room() * 0.30) + 1;
        left = flow.margin() + (narrow ? 8 : labelWidth + GAP);
        right = flow.margin() + flow.room() - (narrow ? 8 : noteWidth + GAP);
    }

    /** A row with its lines of text and where they stand, from the top of the plot. */
    private record Placed(RowChart.Row row, List<String> label, List<String> note, double top, double height) {}

    void lay() {
        List<Placed> placed = place();
        double height = placed.isEmpty() ? 0 : placed.get(placed.size() - 1).top + placed.get(placed.size() - 1).height;
        double top = flow.top() + AXIS;
        List<RowPlot.Spot> spots = new ArrayList<>();
        for (Placed row : placed) {
            double middle = narrow ? row.top + row.height - BAND / 2.0 - 2 : row.top + row.height / 2;
            spots.add(new RowPlot.Spot(row.row, middle));
            flow.part(guide(top + middle), 0);
        }
        flow.part(new RowPlot(chart, spots, height).part(left, right, flow.top(), AXIS, narrow ? 4 : 6), 0);
        placed.forEach(row -> words(row, top + row.top));
        flow.gap(AXIS + height + AXIS);
        flow.text(ChartFont.SMALL, Palette.MUTED, chart.axisTitle()).gap(4).legend(chart.keys());
    }

    private List<Placed> place() {
        List<Placed> placed = new ArrayList<>();
        double top = 0;
        for (RowChart.Row row : chart.rows()) {
            List<String> label = ChartFont.TEXT.wrap(row.label(), labelWidth);
            List<String> note = row.note().isEmpty() ? List.of() : ChartFont.SMALL.wrap(row.note(), noteWidth);
            double words = label.size() * ChartFont.TEXT.lineHeight();
            double notes = note.size() * ChartFont.SMALL.lineHeight();
            double height = narrow ? words + notes + BAND + 6 : Math.max(Math.max(words, notes) + 5, 23);
            placed.add(new Placed(row, label, note, top, height));
            top += height;
        }
        return placed;
    }

    private ChartLayout.Part guide(double y) {
        return sheet -> {
            sheet.setColor(Palette.GRID.light());
            sheet.setStroke(TextFlow.stroke(1, 1, 3));
            sheet.draw(new Line2D.Double(left, y, right, y));
        };
    }

    private void words(Placed row, double top) {
        double words = row.label.size() * ChartFont.TEXT.lineHeight();
        double notes = row.note.size() * ChartFont.SMALL.lineHeight();
        double y = narrow ? top : top + (row.height - words) / 2;
        lines(row.label, ChartFont.TEXT, Palette.TEXT, flow.margin(), y);
        double noteY = narrow ? top + words : top + (row.height - notes) / 2;
        lines(row.note, ChartFont.SMALL, Palette.MUTED, narrow ? flow.margin() : right + GAP, noteY);
    }

    private void lines(List<String> lines, ChartFont face, Palette ink, double x, double top) {
        double y = top;
        for (String line : lines) {
            if (narrow) {
                flow.part(TextFlow.paper(x, y, face.width(line), face.lineHeight()), 0);
            }
            flow.part(TextFlow.words(face, ink, x, y + face.ascent(), line), 0);
            y += face.lineHeight();
        }
    }
}
