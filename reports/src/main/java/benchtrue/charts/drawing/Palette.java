package benchtrue.charts.drawing;

import java.awt.Color;

/**
 * The palette, by role. Blue against orange stays apart for colour-blind eyes and in grey; every mark also has a shape or
 * a dash of its own. Text roles keep 4.5:1 on paper, marks 3:1 (WCAG 2.2, 1.4.3 and 1.4.11), in light and dark.
 */
public enum Palette {
    /** What everything is drawn on. */
    PAPER(0xffffff, 0x15191e),
    /** Words that matter, today's quote. */
    TEXT(0x1c2127, 0xe8ecf1),
    /** Words beside. */
    MUTED(0x555e68, 0xa9b3be),
    /** Lines that only guide the eye. */
    GRID(0xdde2e7, 0x333b44),
    /** The stretch that counts as on the mark. */
    BAND(0xeef1f4, 0x232a32),
    /** Took longer than quoted; money lost. */
    UNDER(0xb84a00, 0xff9d5c),
    /** Took less than quoted; money gained. */
    OVER(0x1660a6, 0x7fb9f2),
    /** As quoted; neither. */
    NEUTRAL(0x555d66, 0xaab4bf),
    /** What is proposed. */
    PROPOSED(0x00705a, 0x5fd0b3);

    private final Color light;
    private final Color dark;

    Palette(int light, int dark) {
        this.light = new Color(light);
        this.dark = new Color(dark);
    }

    /** Returns the colour on light paper; pictures are drawn in these. */
    Color light() {
        return light;
    }

    /** Returns the light colour as it stands in a picture's SVG. */
    public String lightCode() {
        return code(light);
    }

    /** Returns the colour on dark paper, for a style sheet. */
    public String darkCode() {
        return code(dark);
    }

    /** Returns a colour as SVG and CSS write it. */
    static String code(Color color) {
        return "#" + Integer.toHexString(color.getRGB()).substring(2);
    }
}
