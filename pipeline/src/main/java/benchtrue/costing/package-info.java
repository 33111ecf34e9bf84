/**
 * What each line cost and earned (methods, section 7).
 *
 * <p>In: job lines, settings. Out: {@link benchtrue.costing.CostedLines}: revenue, labour, parts, overhead and margin of
 * each line, the balance of money, and {@link benchtrue.costing.ShopMoney}: months, variances, kinds of jobs, the bench
 * hour, work in the shop; {@link benchtrue.costing.SealedMonth}. Refused: nothing; what an optional table would have
 * given is absent, never zero.
 */
package benchtrue.costing;
