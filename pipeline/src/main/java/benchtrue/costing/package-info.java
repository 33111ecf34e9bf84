/**
 * What each line cost and earned (methods, section 7).
 *
 * <p>In: job lines, settings. Out: {@link benchtrue.costing.CostedLines}: revenue, labour, parts, overhead and margin of
 * each line, the rates behind them, and the balance of money. Refused: nothing; what an optional table would have given
 * is absent, never zero.
 */
package benchtrue.costing;
