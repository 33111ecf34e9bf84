/** Bytes of a text file or a workbook to rows of texts, under limits. */
package benchtrue.intake.files;
