package benchtrue.revision;

/**
 * What can't be used of a decided workbook.
 *
 * @param sheet name of the sheet
 * @param cell its address, such as K17
 * @param repair what the bench calls the repair of the row; empty where the cell belongs to no row
 * @param found what stands there, in words
 * @param expected what should, in words
 */
public record CellFault(String sheet, String cell, String repair, String found, String expected) {
    /** Returns the fault in one line. */
    public String words() {
        return "sheet " + sheet + ", cell " + cell + (repair.isEmpty() ? "" : ", " + repair) + ": found " + found
                + ", expected " + expected + ".";
    }
}
