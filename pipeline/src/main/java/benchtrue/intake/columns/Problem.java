package benchtrue.intake.columns;

/** Why the text of a cell can't be used. */
public enum Problem {
    NONE(""),
    EMPTY(""),
    UNREADABLE(""),
    NEGATIVE(", not below zero"),
    TOO_LARGE(", of a size that a shop can have"),
    UNLIKELY_DAY(", between 1900 and 2199"),
    TOO_LONG(", at most " + Dictionary.LONGEST + " bytes long"),
    CONTROL_CHARACTER(", without control characters");

    private final String limit;

    Problem(String limit) {
        this.limit = limit;
    }

    /** Returns the problem of a cell in words. */
    public String words(Column column, String found) {
        String expected = "expected " + column.cell().expected() + limit;
        return this == EMPTY
                ? column.header() + ": empty, " + expected
                : column.header() + ": found \"" + shown(found) + "\", " + expected;
    }

    /** Returns text made fit for one line of a message. */
    public static String shown(String text) {
        int end = Math.min(60, text.length());
        end -= end < text.length() && Character.isSurrogatePair(text.charAt(end - 1), text.charAt(end)) ? 1 : 0;
        String cut = end < text.length() ? text.substring(0, end) + "..." : text;
        return cut.replaceAll("\\p{Cntrl}", "?");
    }
}
