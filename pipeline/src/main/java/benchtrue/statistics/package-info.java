/**
 * Numeric methods on plain arrays, each with its published source. Imports nothing of the project.
 *
 * <p>In: arrays of numbers, which are never changed. Out: numbers and immutable values. Too little data gives {@code NaN}, a
 * wrong shape or an argument outside its range an {@link java.lang.IllegalArgumentException}. Sums run in index order and
 * seeds are arguments, so equal input gives equal bits on any number of threads. Methods, sections 4 to 6 and 8 to 10.
 */
package benchtrue.statistics;
