package benchtrue.intake.columns;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of columns that no file has, but that can be made from where a cell stands or joined from others. */
public final class Made {
    /** The name of the sheet. */
    public static final String SHEET = "(sheet)";

    /** The name of the file, without its ending. */
    public static final String FILE = "(file)";

    /** What stands above the column names. */
    public static final String TITLE = "(title)";

    /** The last heading among the rows. */
    public static final String HEADING = "(heading)";

    /** What the header of a wide table's column says. */
    public static final String COLUMN = "(column)";

    /** What the wide column's cell says. */
    public static final String CELL = "(cell)";

    private static final List<String> PLACES = List.of(SHEET, FILE, TITLE, HEADING);
    private static final Pattern PART = Pattern.compile("\\{([^{}]+)}");

    private Made() {}

    /** Returns whether a name of a rule stands for what no single column of a file holds. */
    public static boolean isMade(String name) {
        return isPlace(name) || isWide(name) || PART.matcher(name).find();
    }

    public static boolean isPlace(String name) {
        return PLACES.contains(name);
    }

    public static boolean isWide(String name) {
        return name.equals(COLUMN) || name.equals(CELL);
    }

    /** Returns the file's headers that a name rests on. */
    public static List<String> sources(String name) {
        if (!isMade(name)) {
            return List.of(name);
        }
        List<String> sources = new ArrayList<>();
        Matcher part = PART.matcher(name);
        while (part.find()) {
            if (!isPlace(part.group(1))) {
                sources.add(part.group(1));
            }
        }
        return sources;
    }

    /** Returns what a name stands for in a row. */
    public static String text(String name, UnaryOperator<String> cells) {
        if (!PART.matcher(name).find()) {
            return cells.apply(name);
        }
        boolean empty =
                sources(name).stream().allMatch(source -> cells.apply(source).isBlank());
        return empty && !sources(name).isEmpty()
                ? ""
                : PART.matcher(name)
                        .replaceAll(part -> Matcher.quoteReplacement(cells.apply(part.group(1))))
                        .strip();
    }
}
