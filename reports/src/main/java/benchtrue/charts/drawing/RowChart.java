package benchtrue.charts.drawing;

import benchtrue.format.Figures;
import java.util.List;

/**
 * Figures one to a row, named on the left, on one common axis.
 *
 * @param axisTitle what the axis measures, with its unit
 * @param form how a figure is drawn
 * @param reference value to compare with, NaN for none
 * @param tolerance how far from the reference still counts as on the mark; 0 for no band
 * @param rows top to bottom
 * @param keys what the marks stand for
 * @param figures how numbers are written
 */
public record RowChart(
        String axisTitle,
        Form form,
        double reference,
        double tolerance,
        List<Row> rows,
        List<LegendEntry> keys,
        Figures figures)
        implements Drawing {
    public RowChart {
        rows = List.copyOf(rows);
        keys = List.copyOf(keys);
    }

    /** How a figure is drawn. */
    public enum Form {
        /** A mark at the value. */
        MARKS,
        /** A mark at the value, a ring where it was before, and the way between. */
        CHANGES,
        /** A bar from zero, or from where it starts, to the value. */
        BARS
    }

    /**
     * One figure.
     *
     * @param label what it is of
     * @param start where its bar begins, or where it was before; NaN for none
     * @param value where its mark stands or its bar ends; NaN for none
     * @param lower lower end of its interval, NaN for none
     * @param upper upper end
     * @param mark what stands for it
     * @param note the figures in words
     */
    public record Row(String label, double start, double value, double lower, double upper, Mark mark, String note) {
        /** A mark, or a bar from zero, with its interval. */
        public Row(String label, double value, double lower, double upper, Mark mark, String note) {
            this(label, 0, value, lower, upper, mark, note);
        }

        /** A bar from zero without an interval. */
        public Row(String label, double value, Mark mark, String note) {
            this(label, 0, value, Double.NaN, Double.NaN, mark, note);
        }
    }

    @Override
    public void layOn(TextFlow flow) {
        new RowSheet(this, flow).lay();
    }
}
