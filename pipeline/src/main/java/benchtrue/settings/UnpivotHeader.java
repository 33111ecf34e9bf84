package benchtrue.settings;

/** What the headers of a wide table's columns say. */
public enum UnpivotHeader {
    /** What they say in words: a name, a month, a repair. */
    TEXT,
    /** A date, with or without its year. */
    DATE,
    /** A weekday. */
    WEEKDAY,
    /** A day of a month, 1 to 31. */
    DAY
}
