package benchtrue.charts.drawing;

import java.awt.RenderingHints;
import java.awt.Shape;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.DOMGroupManager;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * A sheet whose drawing becomes SVG text. Every text carries the width it was laid out with, so that nothing overlaps where
 * a reader's machine draws it in another font. Nothing is clipped: what is drawn stays within its axes.
 */
final class Svg extends SVGGraphics2D {
    static final String NAMESPACE = "http://www.w3.org/2000/svg";

    private Svg(SVGGeneratorContext context) {
        super(context, false);
    }

    /** Returns an empty sheet. */
    static Svg sheet() {
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
        context.setPrecision(2);
        context.setComment(null);
        return new Svg(context);
    }

    private static Document document() {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(NAMESPACE, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("the JDK has no XML parser", e);
        }
    }

    @Override
    public void drawString(String text, float x, float y) {
        if (text.isBlank()) {
            return;
        }
        Element element = getDOMFactory().createElementNS(NAMESPACE, "text");
        element.setAttribute("x", number(x));
        element.setAttribute("y", number(y));
        element.setAttribute("textLength", number(ChartFont.width(getFont(), text)));
        element.setAttribute("lengthAdjust", "spacingAndGlyphs");
        if (getFont().getFontName().endsWith("Bold")) {
            element.setAttribute("font-weight", "bold");
        }
        element.appendChild(getDOMFactory().createTextNode(text));
        domGroupManager.addElement(element, DOMGroupManager.FILL);
    }

    private String number(double value) {
        return getGeneratorContext().doubleString(value);
    }

    @Override
    public void clip(Shape shape) {
        // kept open on purpose
    }

    @Override
    public void setClip(Shape shape) {
        // kept open on purpose
    }

    @Override
    public void setRenderingHint(RenderingHints.Key key, Object value) {
        // hints are for pixels
    }

    /** Returns the root of what was drawn. */
    Element drawn() {
        return getRoot();
    }
}
