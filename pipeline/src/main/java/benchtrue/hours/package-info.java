/**
 * Every hour on the line it belongs to (methods, sections 1 to 3).
 *
 * <p>In: the ledger. Out: {@link benchtrue.hours.JobLines}: hours of each line, logged and split, returns as a memo, the quote
 * against today's book, and the model that splits again under other ticket weights. Hours are conserved per ticket to the
 * second; a line that is named keeps its hours whatever became of it, a declined or void one is dealt none. Refused: nothing.
 */
package benchtrue.hours;
