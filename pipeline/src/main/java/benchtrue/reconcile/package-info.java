/**
 * All rows to one ledger.
 *
 * <p>In: typed rows of every table with their file and line. Out: the {@link benchtrue.reconcile.Ledger}, what was set
 * aside, what is doubtful, and the balances of rows, hours and money so far. Refused: nothing; a row that can't be used
 * is set aside with its reasons.
 */
package benchtrue.reconcile;
