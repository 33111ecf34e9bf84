/**
 * Spreadsheets with live formulas, and the owner's decisions read back.
 *
 * <p>In: a review. Out: {@code review.xlsx} with answers, findings, money, lines and notes. Every formula's stored value is the one Java
 * computed. Text from exports is written as text and never runs. A shop with more lines than the sheet takes gets its
 * newest, the sheet says so and names the file that has all. Refused: nothing.
 */
package benchtrue.workbook;
