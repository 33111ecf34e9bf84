package benchtrue.intake.files;

import java.util.ArrayList;
import java.util.List;

/** Splits text into lines and a line into cells, leniently: for telling how a file is written, not for reading it. */
public final class TextLine {
    private TextLine() {}

    /** Returns the lines of a text, whichever way they end. */
    public static List<String> lines(String text) {
        return List.of(text.split("\r\n|\r|\n", -1));
    }

    /** Returns the cells of a line, without their quotes and the spaces around them. */
    public static List<String> cells(String line, char delimiter, char quote) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char letter = line.charAt(i);
            if (letter == quote && quoted && i + 1 < line.length() && line.charAt(i + 1) == quote) {
                cell.append(letter);
                i++;
            } else if (letter == quote && (quoted || cell.toString().isBlank())) {
                quoted = !quoted;
            } else if (letter == delimiter && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(letter);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }
}
