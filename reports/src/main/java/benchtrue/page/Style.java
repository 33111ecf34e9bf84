package benchtrue.page;

import benchtrue.charts.drawing.Palette;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The page's style sheet: our own file, and the palette in light and dark for page and pictures alike. */
final class Style {
    private Style() {}

    static String sheet() {
        return palette(Shade.LIGHT, ":root")
                + "@media screen and (prefers-color-scheme: dark) {\n"
                + palette(Shade.DARK, ":root")
                + "}\n"
                + pictures()
                + resource();
    }

    private enum Shade {
        LIGHT,
        DARK
    }

    private static String palette(Shade shade, String selector) {
        StringBuilder css = new StringBuilder(selector + " {");
        for (Palette ink : Palette.values()) {
            css.append(" --")
                    .append(variable(ink))
                    .append(": ")
                    .append(shade == Shade.LIGHT ? ink.lightCode() : ink.darkCode())
                    .append(';');
        }
        return css.append(" }\n").toString();
    }

    /** Pictures are drawn in light colours; in the page each follows the palette. */
    private static String pictures() {
        StringBuilder css = new StringBuilder();
        for (Palette ink : Palette.values()) {
            for (String property : new String[] {"fill", "stroke"}) {
                css.append("svg [" + property + "=\"" + ink.lightCode() + "\"] { " + property + ": var(--"
                        + variable(ink) + "); }\n");
            }
        }
        return css.toString();
    }

    private static String variable(Palette ink) {
        return ink.name().toLowerCase(java.util.Locale.ROOT);
    }

    private static String resource() {
        try (InputStream in = Style.class.getResourceAsStream("review.css")) {
            if (in == null) {
                throw new IllegalStateException("the page's style sheet is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the page's style sheet can't be read", e);
        }
    }
}
