package benchtrue.calendar;

/**
 * Bench hours to do that belong together.
 *
 * @param name a week or a kind of work, in words
 * @param hours expected hours to do
 * @param worked hours of that kind that are really worked in a week; NaN where nothing tells
 */
public record WorkAhead(String name, double hours, double worked) {}
