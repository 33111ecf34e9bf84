/** How a sheet is written: cells, styles, headings, pages; the same bytes every night. */
package benchtrue.workbook.sheet;
