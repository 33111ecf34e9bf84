package benchtrue.intake.dialects;

/**
 * What stands around the rows of a file.
 *
 * @param sheet the sheet's name, empty for text
 * @param file the file's name without its ending
 * @param title what stands above the column names
 * @param days what wide headers say
 */
record RowsPlace(String sheet, String file, String title, WideHeader days) {}
