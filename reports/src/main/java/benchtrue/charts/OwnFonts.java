package benchtrue.charts;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** The letters of all pictures, bundled, so that a machine without fonts draws the same picture. */
final class OwnFonts {
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
