/**
 * The next price book, drafted for the owner to decide (methods, sections 8 and 9).
 *
 * <p>In: costed lines, findings, settings. Out: {@link benchtrue.revision.Revision}: proposed hours and price of each
 * repair type within the guard rails, and how such proposals did on past jobs. Refused: a cut of hazardous work or below
 * the shortest safe hours; a change on too few jobs.
 */
package benchtrue.revision;
