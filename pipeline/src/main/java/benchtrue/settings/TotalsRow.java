package benchtrue.settings;

/** Whether the last row of a file is a total. */
public enum TotalsRow {
    PRESENT,
    ABSENT
}
