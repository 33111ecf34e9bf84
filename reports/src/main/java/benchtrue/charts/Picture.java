package benchtrue.charts;

import benchtrue.charts.drawing.ChartFont;
import benchtrue.charts.drawing.ChartLayout;
import benchtrue.charts.drawing.Drawing;
import benchtrue.charts.drawing.Palette;
import benchtrue.charts.drawing.TextFlow;

/** One picture of a review. Its title says the finding; its note gives sample size, dates and what intervals are. */
public final class Picture {
    /** Name of the picture of what the last change of the book did. */
    public static final String LAST_CHANGE = "last-change";

    private final String name;
    private final String title;
    private final String note;
    private final Drawing drawing;
    private final Scope scope;

    /** Takes a picture of the whole shop. */
    public Picture(String name, String title, String note, Drawing drawing) {
        this(name, title, note, drawing, Scope.SHOP);
    }

    public Picture(String name, String title, String note, Drawing drawing, Scope scope) {
        this.scope = scope;
        this.name = name;
        this.title = title;
        this.note = note;
        this.drawing = drawing;
    }

    /** What a picture is of. A shop has one picture of a kind that is of the whole shop, and many of single repairs. */
    public enum Scope {
        SHOP,
        ONE_REPAIR
    }

    /** How wide a sheet is, in pixels of a page. */
    public enum Sheet {
        /** For a screen or paper. */
        WIDE(760),
        /** For a telephone. */
        NARROW(336);

        private final int width;

        Sheet(int width) {
            this.width = width;
        }
    }

    /** Returns the file's name without its ending. */
    public String name() {
        return name;
    }

    public String title() {
        return title;
    }

    public String note() {
        return note;
    }

    public Scope scope() {
        return scope;
    }

    Drawing drawing() {
        return drawing;
    }

    /** Returns an SVG element without the heading, for a page that has the heading as text. */
    public String figure(Sheet sheet) {
        TextFlow flow = new TextFlow(sheet.width, 2);
        drawing.layOn(flow);
        return flow.done().svg(title);
    }

    /** Returns the whole picture, with its heading. */
    public String svg() {
        return layout().svg(title);
    }

    ChartLayout layout() {
        TextFlow flow = new TextFlow(Sheet.WIDE.width, 12)
                .text(ChartFont.TITLE, Palette.TEXT, title)
                .text(ChartFont.TEXT, Palette.MUTED, note);
        drawing.layOn(flow.gap(6));
        return flow.done();
    }
}
