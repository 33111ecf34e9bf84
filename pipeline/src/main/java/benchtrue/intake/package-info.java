/**
 * Bytes to typed rows.
 *
 * <p>In: the files of the inbox and of the price book. Out: rows of each table with file and line, and the rows set aside
 * with every reason. Refused: a file that is not a table, or lacks a column it needs; the message names file, line, column,
 * what was found and what was expected.
 */
package benchtrue.intake;
