/** The price list and the quote table as sheets. In: a review. Out: {@code price-list.xlsx}. */
package benchtrue.workbook.books;
