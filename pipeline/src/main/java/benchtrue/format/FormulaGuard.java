package benchtrue.format;

/**
 * Text as a spreadsheet may open it. Text that a spreadsheet would run as a formula is written with a leading apostrophe,
 * which is removed again where such text comes back.
 */
public final class FormulaGuard {
    /** A line break hides what stands behind it, and some spreadsheets take wide signs for the plain ones. */
    private static final String RUNS = "=+-@\t\r\n\uff1d\uff0b\uff0d\uff20";

    private FormulaGuard() {}

    /** Returns the text as it is written to a file. */
    public static String written(String text) {
        return runs(text) ? "'" + text : text;
    }

    /** Returns the text that {@link #written} was given; any other text unchanged. */
    public static String read(String cell) {
        return !cell.isEmpty() && cell.charAt(0) == '\'' && runs(cell) ? cell.substring(1) : cell;
    }

    /** Counts text that begins so behind apostrophes too, so that what is written can be read back. */
    private static boolean runs(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c != '\'') {
                return RUNS.indexOf(c) >= 0;
            }
        }
        return false;
    }
}
