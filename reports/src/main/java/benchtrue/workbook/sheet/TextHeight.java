package benchtrue.workbook.sheet;

/** How high a row must be for its text to be read. */
public final class TextHeight {
    private static final float LINE_POINTS = 13;
    private static final float ROOM_POINTS = 3;

    /** Text in the usual proportional letters takes less room than its count of characters; bold takes it all. */
    private static final double LETTERS_A_CHARACTER = 1.15;

    private TextHeight() {}

    /** Returns the height in points of words wrapped at a width in characters. */
    public static float of(String words, int width) {
        return ROOM_POINTS + LINE_POINTS * lines(words, width * LETTERS_A_CHARACTER);
    }

    /** Returns the same for bold words. */
    static float bold(String words, int width) {
        return ROOM_POINTS + LINE_POINTS * lines(words, width * 0.95);
    }

    /** Breaks at spaces, as a spreadsheet program does. */
    private static int lines(String words, double width) {
        int lines = 1;
        double used = 0;
        for (String word : words.split(" ")) {
            if (used > 0 && used + 1 + word.length() > width) {
                lines++;
                used = 0;
            }
            used += (used > 0 ? 1 : 0) + word.length();
        }
        return lines;
    }
}
