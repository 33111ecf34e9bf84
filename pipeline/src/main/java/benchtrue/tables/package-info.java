/**
 * Result tables as RFC 4180 files: UTF-8 without a byte-order mark, CRLF, hours and money with four decimals.
 *
 * <p>In: the values of a review. Out: {@code lines.csv}, {@code findings.csv}, {@code revision.csv} and the further
 * tables of the data contract. Text that a spreadsheet would run is made harmless.
 */
package benchtrue.tables;
