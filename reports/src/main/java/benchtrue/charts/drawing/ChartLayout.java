package benchtrue.charts.drawing;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;

/**
 * A picture laid out on a sheet.
 *
 * @param width in pixels
 * @param height in pixels
 * @param parts what stands on it, back to front
 */
public record ChartLayout(int width, int height, List<Part> parts) {
    public ChartLayout {
        parts = List.copyOf(parts);
    }

    /** Something that stands at a place of the sheet. */
    interface Part {
        void draw(Graphics2D sheet);
    }

    /** Returns the picture as an SVG element, named for readers who can't see it. */
    public String svg(String title) {
        Svg sheet = Svg.sheet();
        draw(sheet);
        return SvgText.of(sheet.drawn(), width, height, title);
    }

    /** Returns the picture as pixels, {@code scale} of them for one of the sheet's. */
    public BufferedImage image(double scale) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(width * scale), (int) Math.ceil(height * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D sheet = image.createGraphics();
        sheet.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        sheet.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        sheet.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        sheet.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        sheet.setColor(Palette.PAPER.light());
        sheet.fillRect(0, 0, image.getWidth(), image.getHeight());
        sheet.scale(scale, scale);
        draw(sheet);
        sheet.dispose();
        return image;
    }

    private void draw(Graphics2D sheet) {
        sheet.setColor(Palette.PAPER.light());
        sheet.fill(new Rectangle2D.Double(0, 0, width, height));
        parts.forEach(part -> part.draw(sheet));
    }
}
