package benchtrue.calendar;

import java.util.List;

/**
 * Work that is in the shop.
 *
 * @param lines open lines, by row
 * @param hours expected bench hours still to do on them
 * @param lower lower end of their 90 % interval
 * @param upper upper end
 * @param weeklyHours bench hours a week, NaN where neither recorded nor seen
 * @param weeklyFrom where the weekly hours come from, in plain words
 * @param promises open tickets with a promised day, by that day
 * @param atCost what unfinished work has cost so far, in ten-thousandths; absent without a wage list
 */
public record Backlog(
        List<OpenLine> lines,
        double hours,
        double lower,
        double upper,
        double weeklyHours,
        String weeklyFrom,
        List<Promise> promises,
        long atCost) {
    public Backlog {
        lines = List.copyOf(lines);
        promises = List.copyOf(promises);
    }

    /** Returns weeks of work, NaN where the weekly hours are not known. */
    public double weeks() {
        return hours / weeklyHours;
    }
}
