/** The review as a workbook with live formulas. */
package benchtrue.workbook.review;
