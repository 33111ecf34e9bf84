/**
 * What waits, whom to call, when to promise (methods, section 15): calendar days beside bench hours, never mixed up.
 *
 * <p>In: costed lines, settings. Out: {@link benchtrue.calendar.Calendar}: every open ticket in one place, the calls in the
 * order of what they save, work in the shop, waiting by reason. Refused: nothing; what the exports do not tell is absent.
 */
package benchtrue.calendar;
