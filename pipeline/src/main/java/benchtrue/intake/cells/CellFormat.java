package benchtrue.intake.cells;

import benchtrue.intake.columns.Column;

/** How one file writes numbers, dates, times and words. */
public interface CellFormat {
    /**
     * Returns what the data contract would have written: a point before decimals, dates as 2026-03-09, hours in decimals,
     * the contract's words. Text that this format can't read is returned as it stands, and then refused as unreadable.
     */
    String canonical(Column column, String text);
}
