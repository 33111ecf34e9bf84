package benchtrue.settings;

/** Every key of a {@code [[files]]} rule, with what it may hold and what it is for. */
enum FileKey {
    NAME("name", "a file name, with * for any letters and ? for one", "which files of exports and price-book"),
    TABLE("table", "a table's name", "what the rows are"),
    ENCODING("encoding", "the name of an encoding such as \"windows-1252\"", "how letters are written"),
    DELIMITER("delimiter", "one character or \"tab\"", "what stands between cells"),
    QUOTE("quote", "one character or \"none\"", "what stands around text"),
    DECIMAL("decimal", "\".\" or \",\"", "what stands before decimals"),
    DATES("dates", "\"day-month-year\", \"month-day-year\" or \"year-month-day\"", "order of dates in figures"),
    HEADER_LINE("header_line", "a whole number from 1 to 10000", "line of the column names"),
    TOTALS_ROW("totals_row", "true or false", "whether the last row is a total, which is left out"),
    SHEET("sheet", "a sheet's name or a list of them, with * and ?", "which sheets of a workbook"),
    EFFECTIVE("effective", "a date such as \"2026-01-01\"", "from which day a price list among the exports holds"),
    FILL_DOWN(
            "fill_down", "a list of the file's headers", "columns whose cell stands once above the rows it holds for"),
    HOURS(
            "hours",
            "\"hours\", \"minutes\", \"hundredths\" or \"hours-minutes\" (1.30 is 1 h 30 min)",
            "what a number for hours counts"),
    ENTRIES("entries", "a section with span = \"day\", \"week\" or \"month\"", "over which days one entry is a sum"),
    COLUMNS("columns", "canonical column = \"the file's header\"", "which of the file's columns is which"),
    PATTERNS("patterns", "canonical column = a pattern with one group", "which part of a column's texts counts"),
    UNPIVOT(
            "unpivot",
            "a section with header = \"text\", \"date\", \"weekday\" or \"day\", and columns, after or before",
            "columns that hold one entry a cell; \"(column)\" and \"(cell)\" name header and cell"),
    VALUES("values", "a section a column, in it \"the file's word\" = \"the contract's word\"", "what its words mean"),
    CONSTANTS("constants", "canonical column = \"a text\"", "what holds for every row");

    private final String path;
    private final String expected;
    private final String meaning;

    FileKey(String path, String expected, String meaning) {
        this.path = path;
        this.expected = expected;
        this.meaning = meaning;
    }

    /** Returns the key within its rule. */
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
