/**
 * The shop's own terms as immutable values: tickets, quoted lines, time, parts, price books.
 *
 * <p>Hours are whole seconds, money is ten-thousandths of the currency unit, dates are days since 1970-01-01, months are
 * {@code year * 12 + month - 1}. Rows that come in millions are columns behind accessors; rows that come in hundreds are
 * records. Imports nothing of the project. Refuses nothing: what can't be used was set aside before.
 */
package benchtrue.shop;
