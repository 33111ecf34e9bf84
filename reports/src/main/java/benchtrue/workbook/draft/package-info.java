/** The drafted price book as a workbook, and the owner's decisions read back from it. */
package benchtrue.workbook.draft;
