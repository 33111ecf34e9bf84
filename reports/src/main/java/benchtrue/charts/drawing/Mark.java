package benchtrue.charts.drawing;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/** What stands for a figure; told apart by shape and by filling before colour. */
public enum Mark {
    UNDER("under-quoted", Form.RIGHT, 6, Palette.UNDER, Filling.FULL),
    LEANING_UNDER("leaning under", Form.RIGHT, 6, Palette.UNDER, Filling.HOLLOW),
    ON_THE_MARK("on the mark", Form.CIRCLE, 4.5, Palette.NEUTRAL, Filling.FULL),
    LEANING_OVER("leaning over", Form.LEFT, 6, Palette.OVER, Filling.HOLLOW),
    OVER("over-quoted", Form.LEFT, 6, Palette.OVER, Filling.FULL),
    TOO_FEW("too few jobs", Form.CROSS, 4, Palette.NEUTRAL, Filling.FULL),
    NOT_JUDGED("not judged: hours missing", Form.DIAMOND, 4.5, Palette.NEUTRAL, Filling.HOLLOW),
    JOB_OVER("longer than its quote", Form.CIRCLE, 3.2, Palette.UNDER, Filling.FULL),
    JOB_WITHIN("within its quote", Form.CIRCLE, 3.2, Palette.OVER, Filling.HOLLOW),
    SHARE_OVER("longer; its share of a whole ticket's hours", Form.DIAMOND, 3.6, Palette.UNDER, Filling.FULL),
    SHARE_WITHIN("within; its share of a whole ticket's hours", Form.DIAMOND, 3.6, Palette.OVER, Filling.HOLLOW),
    BEFORE("before", Form.CIRCLE, 4, Palette.NEUTRAL, Filling.HOLLOW),
    PLAIN("", Form.CIRCLE, 4.5, Palette.NEUTRAL, Filling.FULL),
    UNSOLD("", Form.CIRCLE, 4.5, Palette.NEUTRAL, Filling.HOLLOW),
    SMALL("", Form.CIRCLE, 2.4, Palette.NEUTRAL, Filling.FULL),
    BEYOND("", Form.RIGHT, 4, Palette.TEXT, Filling.FULL),
    BELOW("", Form.LEFT, 4, Palette.TEXT, Filling.FULL),
    NONE("", Form.CIRCLE, 0, Palette.TEXT, Filling.FULL);

    /** Whether a mark is painted or only outlined. */
    enum Filling {
        FULL,
        HOLLOW
    }

    private enum Form {
        CIRCLE,
        DIAMOND,
        RIGHT,
        LEFT,
        CROSS
    }

    private final String words;
    private final Form form;
    private final double size;
    private final Palette ink;
    private final Filling filling;

    Mark(String words, Form form, double size, Palette ink, Filling filling) {
        this.words = words;
        this.form = form;
        this.size = size;
        this.ink = ink;
        this.filling = filling;
    }

    /** Returns what the mark stands for. */
    public String words() {
        return words;
    }

    Palette ink() {
        return ink;
    }

    Palette inside() {
        return filling == Filling.FULL ? ink : Palette.PAPER;
    }

    /** Paints the mark around a place. */
    void paint(Graphics2D sheet, double x, double y) {
        Shape shape = shape(x, y);
        sheet.setColor(inside().light());
        sheet.fill(shape);
        sheet.setColor(ink.light());
        sheet.setStroke(TextFlow.stroke(1.5f));
        sheet.draw(shape);
    }

    private Shape shape(double x, double y) {
        return switch (form) {
            case CIRCLE -> new Ellipse2D.Double(x - size, y - size, 2 * size, 2 * size);
            case DIAMOND -> outline(x, y, -size, 0, 0, -size, size, 0, 0, size);
            case RIGHT -> outline(x, y, -size * 0.8, -size, size, 0, -size * 0.8, size);
            case LEFT -> outline(x, y, size * 0.8, -size, -size, 0, size * 0.8, size);
            case CROSS -> cross(x, y);
        };
    }

    private Shape cross(double x, double y) {
        Path2D path = new Path2D.Double();
        path.moveTo(x - size, y - size);
        path.lineTo(x + size, y + size);
        path.moveTo(x - size, y + size);
        path.lineTo(x + size, y - size);
        return path;
    }

    private static Shape outline(double x, double y, double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(x + points[0], y + points[1]);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(x + points[i], y + points[i + 1]);
        }
        path.closePath();
        return path;
    }
}
