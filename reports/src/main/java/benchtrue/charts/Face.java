package benchtrue.charts;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.List;

/** A size and weight of letters, and how much room text takes in it, in pixels. */
enum Face {
    TITLE(OwnFonts.BOLD, 17),
    STRONG(OwnFonts.BOLD, 13),
    TEXT(OwnFonts.REGULAR, 13),
    SMALL(OwnFonts.REGULAR, 12);

    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private final Font font;

    Face(Font base, float size) {
        font = base.deriveFont(size);
    }

    Font font() {
        return font;
    }

    /** Returns how wide a text is drawn. */
    static double width(Font font, String text) {
        return font.getStringBounds(text, EXACT).getWidth();
    }

    double width(String text) {
        return width(font, text);
    }

    /** Returns the distance between two lines of text. */
    int lineHeight() {
        return Math.round(font.getSize2D() * 1.3f);
    }

    /** Returns how far the base line stands below the top of its line. */
    int ascent() {
        return Math.round(font.getSize2D() * 1.0f);
    }

    /** Returns whether every letter of a text can be drawn. */
    static boolean shows(String text) {
        return OwnFonts.REGULAR.canDisplayUpTo(text) < 0;
    }

    /** Returns a text broken into lines no wider than a width, at spaces where it can, else between letters. */
    List<String> wrap(String text, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = pieces(word, width, lines);
        }
        lines.add(line);
        return lines;
    }

    private String pieces(String word, double width, List<String> lines) {
        String rest = word;
        while (width(rest) > width && rest.codePointCount(0, rest.length()) > 1) {
            int end = rest.offsetByCodePoints(0, 1);
            while (width(rest.substring(0, rest.offsetByCodePoints(end, 1))) <= width) {
                end = rest.offsetByCodePoints(end, 1);
            }
            lines.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        return rest;
    }
}
