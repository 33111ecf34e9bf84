/**
 * Pictures of one night's review.
 *
 * <p>In: {@link benchtrue.nightly.Review}. Out: {@link benchtrue.charts.Picture}s, each with a title that says the finding,
 * as SVG and PNG in {@code charts/}. Works on a machine without fonts: letters come from a font of our own. Refused: a
 * picture of figures that the shop's files can't give; the list of what is left out says why.
 */
package benchtrue.charts;
