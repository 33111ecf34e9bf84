package benchtrue.settings;

/** Every key of a {@code [[breakdown]]} question, with what it may hold and what it is for. */
enum BreakdownKey {
    TITLE("title", "a text", "what the question is called"),
    BY("by", "one to three names in square brackets", "what the jobs are grouped by"),
    ACROSS("across", "a name", "which name stands across"),
    WHERE("where", "conditions in square brackets", "which jobs; all conditions hold together"),
    FROM("from", "a day such as \"2026-03-01\" or \"12 months\"", "first day, or how far back"),
    TO("to", "a day such as \"2026-06-30\"", "last day"),
    DATE("date", "\"quoted\", \"opened\" or \"closed\"", "which day of a job counts; quoted without it"),
    SHOW("show", "names of figures in square brackets", "which figures"),
    SORT("sort", "a figure, or \"FIGURE rising\"", "the largest first; by name without it"),
    TOP("top", "a whole number from 0 to 1000", "how many rows are shown; 0 shows all"),
    PICTURE("picture", "true or false", "whether the page and charts have a picture of it");

    private final String path;
    private final String expected;
    private final String meaning;

    BreakdownKey(String path, String expected, String meaning) {
        this.path = path;
        this.expected = expected;
        this.meaning = meaning;
    }

    /** Returns the key within its question. */
    String path() {
        return path;
    }

    /** Returns what the key may hold, in words. */
    String expected() {
        return expected;
    }

    /** Returns what the key is for. */
    String meaning() {
        return meaning;
    }
}
