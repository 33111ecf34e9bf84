package benchtrue.charts;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/** What stands for a figure; told apart by shape and by filling before colour. */
enum Mark {
    UNDER("under-quoted", pointing(6), Ink.UNDER, Filling.FULL),
    LEANING_UNDER("leaning under", pointing(6), Ink.UNDER, Filling.HOLLOW),
    ON_THE_MARK("on the mark", circle(4.5), Ink.NEUTRAL, Filling.FULL),
    LEANING_OVER("leaning over", pointing(-6), Ink.OVER, Filling.HOLLOW),
    OVER("over-quoted", pointing(-6), Ink.OVER, Filling.FULL),
    TOO_FEW("too few jobs", cross(4), Ink.NEUTRAL, Filling.FULL),
    JOB_OVER("longer than its quote", circle(3.2), Ink.UNDER, Filling.FULL),
    JOB_WITHIN("within its quote", circle(3.2), Ink.OVER, Filling.HOLLOW),
    SHARE_OVER("longer, hours dealt from the whole ticket", diamond(3.6), Ink.UNDER, Filling.FULL),
    SHARE_WITHIN("within, hours dealt from the whole ticket", diamond(3.6), Ink.OVER, Filling.HOLLOW),
    PROPOSED("proposed", diamond(5.5), Ink.PROPOSED, Filling.FULL),
    PLAIN("", circle(4.5), Ink.NEUTRAL, Filling.FULL);

    /** Whether a mark is painted or only outlined. */
    enum Filling {
        FULL,
        HOLLOW
    }

    private final String words;
    private final Shape shape;
    private final Ink ink;
    private final Filling filling;

    Mark(String words, Shape shape, Ink ink, Filling filling) {
        this.words = words;
        this.shape = shape;
        this.ink = ink;
        this.filling = filling;
    }

    /** Returns what the mark stands for. */
    String words() {
        return words;
    }

    Shape shape() {
        return shape;
    }

    Ink ink() {
        return ink;
    }

    Filling filling() {
        return filling;
    }

    private static Shape circle(double radius) {
        return new Ellipse2D.Double(-radius, -radius, 2 * radius, 2 * radius);
    }

    /** A triangle that points right for a positive size, left for a negative one. */
    private static Shape pointing(double size) {
        double height = Math.abs(size);
        return outline(-size * 0.8, -height, size, 0, -size * 0.8, height);
    }

    private static Shape diamond(double size) {
        return outline(-size, 0, 0, -size, size, 0, 0, size);
    }

    private static Shape cross(double size) {
        double arm = size * 0.35;
        return outline(
                -size,
                -size + arm,
                -arm,
                0,
                -size,
                size - arm,
                -size + arm,
                size,
                0,
                arm,
                size - arm,
                size,
                size,
                size - arm,
                arm,
                0,
                size,
                -size + arm,
                size - arm,
                -size,
                0,
                -arm,
                -size + arm,
                -size);
    }

    private static Shape outline(double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        path.closePath();
        return path;
    }
}
