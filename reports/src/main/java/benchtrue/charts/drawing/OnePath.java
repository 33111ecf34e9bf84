package benchtrue.charts.drawing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Element;

/**
 * Shapes of one paint as one path. Only where it looks the same: shapes that have no filling, or are filled with the colour of
 * their line, can't be seen to lie over each other.
 */
final class OnePath {
    private static final Set<String> SHAPES = Set.of("line", "rect", "circle", "path");

    private OnePath() {}

    /** Returns whether shapes painted alike may become one. */
    static boolean can(List<Element> alike) {
        String fill = alike.get(0).getAttribute("fill");
        return (fill.equals("none")
                        || !fill.isEmpty() && fill.equals(alike.get(0).getAttribute("stroke")))
                && alike.stream().allMatch(OnePath::isPlain);
    }

    private static boolean isPlain(Element shape) {
        return SHAPES.contains(shape.getTagName())
                && !shape.hasAttribute("transform")
                && !shape.hasAttribute("rx")
                && !shape.hasAttribute("ry");
    }

    /** Returns the path's {@code d}. */
    static String of(List<Element> shapes) {
        StringBuilder path = new StringBuilder();
        for (Element shape : shapes) {
            path.append(path.isEmpty() ? "" : " ").append(part(shape));
        }
        return path.toString();
    }

    private static String part(Element shape) {
        return switch (shape.getTagName()) {
            case "line" ->
                "M" + at(shape, "x1") + " " + at(shape, "y1") + "L" + at(shape, "x2") + " " + at(shape, "y2");
            case "rect" ->
                "M" + at(shape, "x") + " " + at(shape, "y") + "h" + at(shape, "width") + "v" + at(shape, "height") + "H"
                        + at(shape, "x") + "Z";
            case "circle" -> circle(at(shape, "cx"), at(shape, "cy"), at(shape, "r"));
            default -> at(shape, "d");
        };
    }

    /** Two halves: no arc goes all the way round. */
    private static String circle(String x, String y, String radius) {
        String across = new BigDecimal(radius)
                .multiply(BigDecimal.valueOf(2))
                .stripTrailingZeros()
                .toPlainString();
        String half = "a" + radius + " " + radius + " 0 1 1 ";
        return "M" + x + " " + y + "m-" + radius + " 0" + half + across + " 0" + half + "-" + across + " 0Z";
    }

    private static String at(Element shape, String name) {
        return shape.getAttribute(name);
    }
}
