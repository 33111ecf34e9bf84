package benchtrue.charts.drawing;

import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * One entry of a picture's key: a sample and what it stands for.
 *
 * @param words what it stands for
 * @param sample draws the sample around the origin
 */
public record LegendEntry(String words, ChartLayout.Part sample) {
    /** Room for the sample before the words, pixels. */
    static final int SAMPLE = 26;

    public static LegendEntry of(Mark mark, String words) {
        return new LegendEntry(words, sheet -> mark.paint(sheet, 0, 0));
    }

    /** Returns the entry of a bar. */
    public static LegendEntry bar(Mark mark, String words) {
        return new LegendEntry(words, sheet -> {
            Rectangle2D box = new Rectangle2D.Double(-8, -5, 16, 10);
            sheet.setColor(mark.inside().light());
            sheet.fill(box);
            sheet.setColor(mark.ink().light());
            sheet.setStroke(TextFlow.stroke(1.5f));
            sheet.draw(box);
        });
    }

    public static LegendEntry of(Palette ink, Stroke stroke, String words) {
        return new LegendEntry(words, sheet -> {
            sheet.setColor(ink.light());
            sheet.setStroke(stroke);
            sheet.draw(new Line2D.Double(-9, 0, 9, 0));
        });
    }

    /** Returns the sample with the words beside it, in lines. */
    ChartLayout.Part at(double x, double top, List<String> lines) {
        return sheet -> {
            AffineTransform before = sheet.getTransform();
            sheet.translate(x + 9, top + ChartFont.SMALL.ascent() - 4);
            sample.draw(sheet);
            sheet.setTransform(before);
            double baseline = top + ChartFont.SMALL.ascent();
            for (String line : lines) {
                TextFlow.words(ChartFont.SMALL, Palette.MUTED, x + SAMPLE, baseline, line)
                        .draw(sheet);
                baseline += ChartFont.SMALL.lineHeight();
            }
        };
    }
}
