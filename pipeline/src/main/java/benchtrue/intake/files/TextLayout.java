package benchtrue.intake.files;

import java.util.List;

/**
 * Where the table stands in a file's text.
 *
 * @param delimiter between cells
 * @param quote around text, or {@link benchtrue.settings.FileRule#NO_QUOTE}
 * @param headerLine line of the column names, from 1
 * @param reasons how that was told, for a person
 */
public record TextLayout(char delimiter, char quote, int headerLine, List<String> reasons) {
    public TextLayout {
        reasons = List.copyOf(reasons);
    }

    /** Returns the delimiter as a person calls it. */
    public static String name(char delimiter) {
        return switch (delimiter) {
            case ',' -> "comma";
            case ';' -> "semicolon";
            case '\t' -> "tab";
            case '|' -> "bar";
            default -> "\"" + delimiter + "\"";
        };
    }
}
