package benchtrue.charts.drawing;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A size and weight of letters, and how much room text takes in it, in pixels. */
public enum ChartFont {
    TITLE(OwnFonts.BOLD, 17),
    STRONG(OwnFonts.BOLD, 13),
    TEXT(OwnFonts.REGULAR, 13),
    SMALL(OwnFonts.REGULAR, 12);

    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private final Font font;

    ChartFont(Font base, float size) {
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
    public static boolean shows(String text) {
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

    /** The letters of all pictures, bundled, so that a machine without fonts draws the same picture. */
    static final class OwnFonts {
        static final Font REGULAR;
        static final Font BOLD;
        private static final String CONFIGURATION = "sun.awt.fontconfig";

        static {
            try {
                needNoFontsOfTheMachine();
                REGULAR = load("sans-regular.ttf");
                BOLD = load("sans-bold.ttf");
            } catch (IOException e) {
                throw new UncheckedIOException("the fonts of the pictures can't be read", e);
            }
        }

        private OwnFonts() {}

        /** Where Java asks the system for fonts and finds none it gives up; its own configuration file spares the question. */
        private static void needNoFontsOfTheMachine() throws IOException {
            boolean linux =
                    System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
            if (!linux || System.getProperty(CONFIGURATION) != null) {
                return;
            }
            Path file = Files.createTempFile("benchtrue", ".fontconfig.properties");
            file.toFile().deleteOnExit();
            try (InputStream in = resource("fontconfig.properties")) {
                Files.write(file, in.readAllBytes());
            }
            System.setProperty(CONFIGURATION, file.toString());
        }

        private static Font load(String name) throws IOException {
            try (InputStream in = resource(name)) {
                return Font.createFont(Font.TRUETYPE_FONT, in);
            } catch (FontFormatException e) {
                throw new IOException("bundled font " + name + " is damaged", e);
            }
        }

        private static InputStream resource(String name) throws IOException {
            InputStream in = OwnFonts.class.getResourceAsStream("font/" + name);
            if (in == null) {
                throw new IOException("bundled file font/" + name + " is missing");
            }
            return in;
        }
    }
}
