package benchtrue.charts;

import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** The boxes that the words of an SVG picture take, from the picture itself. */
public final class TextBoxes {
    /** Letters of the bundled font reach this far above and below the base line, as shares of the size. */
    private static final double ABOVE = 0.74;

    private static final double BELOW = 0.22;

    /** A text and its box. */
    record Box(String text, Rectangle2D place) {}

    private final List<Box> boxes = new ArrayList<>();

    private TextBoxes() {}

    static List<Box> of(String svg) throws Exception {
        TextBoxes found = new TextBoxes();
        found.walk(root(svg), 12);
        return found.boxes;
    }

    public static Element root(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();
    }

    private void walk(Element element, double inherited) {
        String own = element.getAttribute("font-size");
        double size = own.isEmpty() ? inherited : Double.parseDouble(own.replace("px", ""));
        if (element.getTagName().equals("text")) {
            double x = Double.parseDouble(element.getAttribute("x"));
            double y = Double.parseDouble(element.getAttribute("y"));
            double width = Double.parseDouble(element.getAttribute("textLength"));
            boxes.add(new Box(
                    element.getTextContent(),
                    new Rectangle2D.Double(x, y - ABOVE * size, width, (ABOVE + BELOW) * size)));
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                walk(inner, size);
            }
        }
    }
}
