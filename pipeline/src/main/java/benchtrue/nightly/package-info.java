/**
 * The run: the stages in order, the lock, whole-or-nothing publishing, the record of the run.
 *
 * <p>In: a shop folder, an as-of date, the reports to write. Out: a dated results folder, there whole or not at all.
 * Refused: a second run on the same folder; an unusable file; a balance that fails.
 */
package benchtrue.nightly;
