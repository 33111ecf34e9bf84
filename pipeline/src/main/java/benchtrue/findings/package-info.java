/**
 * Which repairs are quoted too low, which got slower, and why (methods, sections 4 to 6).
 *
 * <p>In: costed lines, settings. Out: {@link benchtrue.findings.Findings}: one row a repair type with load factor, interval,
 * p-values, money a year, verdict and reason. Refused: a verdict on too few jobs.
 */
package benchtrue.findings;
