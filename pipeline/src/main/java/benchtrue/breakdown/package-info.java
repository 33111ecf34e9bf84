/**
 * The owner's own questions to the fact table: which jobs, grouped by what, with which figures.
 *
 * <p>In come {@code lines.csv} of one night and a question in plain words; out go {@link benchtrue.breakdown.Breakdown}s, ready
 * to be shown. Names that nobody knows are refused with the nearest known one. Reading, filtering, grouping, pivoting and sorting
 * are Tablesaw's, which no other package sees; {@link benchtrue.breakdown.Facts} alone loads it.
 */
package benchtrue.breakdown;
