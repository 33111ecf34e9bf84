package benchtrue.charts.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/** Writes a drawing as one SVG element: no prologue, no identifiers, the same text on every JDK. */
final class SvgText {
    private static final String FAMILY = "'Benchtrue Sans', Arimo, 'Liberation Sans', Arial, Helvetica, sans-serif";
    private static final Set<String> GEOMETRY = Set.of(
            "x",
            "y",
            "x1",
            "x2",
            "y1",
            "y2",
            "cx",
            "cy",
            "r",
            "rx",
            "ry",
            "d",
            "points",
            "width",
            "height",
            "transform");
    private static final Set<String> PAINT = Set.of(
            "fill",
            "stroke",
            "stroke-width",
            "stroke-dasharray",
            "font-size",
            "font-weight",
            "textLength",
            "lengthAdjust");
    private static final Set<String> WRITTEN = new HashSet<>(PAINT);

    static {
        WRITTEN.addAll(GEOMETRY);
    }

    private static final Pattern COLOUR = Pattern.compile("rgb\\((\\d+),(\\d+),(\\d+)\\)");
    private final StringBuilder text = new StringBuilder(16_384);

    private SvgText() {}

    /** Returns a drawing of a size, named for readers who can't see it. */
    static String of(Element root, int width, int height, String title) {
        SvgText writer = new SvgText();
        writer.text
                .append("<svg xmlns=\"" + Svg.NAMESPACE + "\" viewBox=\"0 0 ")
                .append(width + " " + height + "\" width=\"" + width + "\" height=\"" + height)
                .append("\" role=\"img\" fill=\"black\" stroke=\"black\" font-size=\"12px\" font-family=\"" + FAMILY
                        + "\"><title>");
        writer.escape(title);
        writer.text.append("</title>\n");
        writer.children(root);
        return writer.text.append("</svg>\n").toString();
    }

    private void children(Element parent) {
        List<Element> alike = new ArrayList<>();
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child.getNodeType() == Node.TEXT_NODE) {
                escape(child.getNodeValue());
                continue;
            }
            Element element = (Element) child;
            if (child.getNextSibling() instanceof Element outline && outlines(outline, element)) {
                outline.setAttribute("fill", element.getAttribute("fill"));
                element = outline;
                child = outline;
            }
            if (!alike.isEmpty() && !alike(alike.get(0), element)) {
                write(alike);
            }
            alike.add(element);
        }
        write(alike);
    }

    private static boolean alike(Element one, Element other) {
        return !one.hasChildNodes()
                && !other.hasChildNodes()
                && PAINT.stream().allMatch(name -> one.getAttribute(name).equals(other.getAttribute(name)));
    }

    /** Shapes painted alike become one, or stand in one group that says so once: hundreds of points then take little room. */
    private void write(List<Element> alike) {
        if (alike.size() > 1 && OnePath.can(alike)) {
            text.append("<path");
            attributes(alike.get(0).getAttributes(), PAINT);
            text.append(" d=\"").append(OnePath.of(alike)).append("\"/>\n");
        } else if (alike.size() > 1 && !alike.get(0).getTagName().equals("g")) {
            text.append("<g");
            attributes(alike.get(0).getAttributes(), PAINT);
            text.append(">\n");
            for (Element element : alike) {
                text.append('<').append(element.getTagName());
                attributes(element.getAttributes(), GEOMETRY);
                text.append("/>\n");
            }
            text.append("</g>\n");
        } else {
            alike.forEach(this::element);
        }
        alike.clear();
    }

    /** A filled shape and the outline drawn over it become one element. */
    private static boolean outlines(Element outline, Element filled) {
        return filled.getAttribute("stroke").equals("none")
                && outline.getAttribute("fill").equals("none")
                && outline.getTagName().equals(filled.getTagName())
                && GEOMETRY.stream().allMatch(name -> filled.getAttribute(name).equals(outline.getAttribute(name)));
    }

    private void element(Element element) {
        String name = element.getTagName();
        if (name.equals("defs") || (name.equals("g") && !element.hasChildNodes())) {
            return;
        }
        if (name.equals("g") && element.getChildNodes().getLength() == 1) {
            onlyChild(element, (Element) element.getFirstChild());
            return;
        }
        text.append('<').append(name);
        attributes(element.getAttributes(), WRITTEN);
        if (element.hasChildNodes()) {
            text.append('>');
            children(element);
            text.append("</").append(name).append('>');
        } else {
            text.append("/>");
        }
        text.append('\n');
    }

    /** A group of one says nothing that the one can't say itself. */
    private void onlyChild(Element group, Element child) {
        NamedNodeMap all = group.getAttributes();
        for (int i = 0; i < all.getLength(); i++) {
            if (!child.hasAttribute(all.item(i).getNodeName())) {
                child.setAttribute(all.item(i).getNodeName(), all.item(i).getNodeValue());
            }
        }
        element(child);
    }

    private void attributes(NamedNodeMap all, Set<String> written) {
        for (int i = 0; i < all.getLength(); i++) {
            String name = all.item(i).getNodeName();
            String value = all.item(i).getNodeValue();
            if (written.contains(name) && !value.isEmpty()) {
                text.append(' ').append(name).append("=\"");
                escape(value(name, value));
                text.append('"');
            }
        }
    }

    private static String value(String name, String value) {
        if (!name.equals("fill") && !name.equals("stroke")) {
            return value;
        }
        if (value.equals("white")) {
            return "#ffffff";
        }
        Matcher colour = COLOUR.matcher(value);
        return colour.matches()
                ? Palette.code(new java.awt.Color(part(colour, 1), part(colour, 2), part(colour, 3)))
                : value;
    }

    private static int part(Matcher colour, int place) {
        return Integer.parseInt(colour.group(place));
    }

    private void escape(String raw) {
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            switch (c) {
                case '<' -> text.append("&lt;");
                case '>' -> text.append("&gt;");
                case '&' -> text.append("&amp;");
                case '"' -> text.append("&quot;");
                default -> text.append(c);
            }
        }
    }
}
