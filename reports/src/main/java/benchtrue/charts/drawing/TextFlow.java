package benchtrue.charts.drawing;

import java.awt.BasicStroke;
import java.awt.Stroke;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Stacks the parts of a picture from top to bottom; nothing is drawn before all is placed. */
public final class TextFlow {
    private final int width;
    private final int margin;
    private final List<ChartLayout.Part> parts = new ArrayList<>();
    private double top;

    /** Begins a sheet of a width with a margin all around, pixels. */
    public TextFlow(int width, int margin) {
        this.width = width;
        this.margin = margin;
        top = margin;
    }

    int margin() {
        return margin;
    }

    /** Returns where the next part begins. */
    double top() {
        return top;
    }

    /** Returns the room between the margins. */
    double room() {
        return width - 2.0 * margin;
    }

    public TextFlow gap(double height) {
        top += height;
        return this;
    }

    TextFlow part(ChartLayout.Part part, double height) {
        parts.add(part);
        top += height;
        return this;
    }

    /** Adds text over the whole width, in as many lines as it needs. */
    public TextFlow text(ChartFont face, Palette ink, String text) {
        for (String line : face.wrap(text, room())) {
            part(words(face, ink, margin, top + face.ascent(), line), face.lineHeight());
        }
        return this;
    }

    /** Adds the key of marks and lines, as many to a row as fit. */
    TextFlow legend(List<LegendEntry> keys) {
        double x = margin;
        for (LegendEntry key : keys) {
            List<String> lines = ChartFont.SMALL.wrap(key.words(), room() - LegendEntry.SAMPLE);
            double needed = LegendEntry.SAMPLE + ChartFont.SMALL.width(lines.get(0));
            if (x > margin && x + needed > width - margin) {
                x = margin;
                top += ChartFont.SMALL.lineHeight() + 2;
            }
            parts.add(key.at(x, top, lines));
            top += (lines.size() - 1) * ChartFont.SMALL.lineHeight();
            x += needed + 18;
        }
        return gap(keys.isEmpty() ? 0 : ChartFont.SMALL.lineHeight() + 2);
    }

    public ChartLayout done() {
        return new ChartLayout(width, (int) Math.ceil(top + margin), parts);
    }

    static ChartLayout.Part words(ChartFont face, Palette ink, double x, double baseline, String text) {
        return sheet -> {
            sheet.setFont(face.font());
            sheet.setColor(ink.light());
            sheet.drawString(text, (float) x, (float) baseline);
        };
    }

    /** Covers what stands behind words. */
    static ChartLayout.Part paper(double x, double y, double width, double height) {
        return sheet -> {
            sheet.setColor(Palette.PAPER.light());
            sheet.fill(new Rectangle2D.Double(x, y, width, height));
        };
    }

    /** Returns a line of a width and dashes, with square ends. */
    static Stroke stroke(float width, float... dashes) {
        return dashes.length == 0
                ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER)
                : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0);
    }
}
