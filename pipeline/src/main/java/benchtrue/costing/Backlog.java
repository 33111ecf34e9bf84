package benchtrue.costing;

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
 * @param promises open tickets with a promised date, by that date
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

    /** Returns the lower end of the weeks. */
    public double weeksLower() {
        return lower / weeklyHours;
    }

    /** Returns the upper end of the weeks. */
    public double weeksUpper() {
        return upper / weeklyHours;
    }

    /** Returns the promises that will more likely be broken than kept. */
    public List<Promise> atRisk() {
        return promises.stream().filter(promise -> promise.chanceLate() > 0.5).toList();
    }

    /**
     * A promised date. The bench is taken to work in the order of promised dates (Jackson 1955), bench hours alone: waiting
     * for glue, finish, parts or a customer comes on top.
     *
     * @param ticket index of the ticket
     * @param promised day promised
     * @param hours expected bench hours still to do on it
     * @param readyOn day by which they are expected to be done, or {@link benchtrue.shop.Absent#DAY}
     * @param chanceLate chance that they are not done by the promised day, NaN where the weekly hours are not known
     */
    public record Promise(int ticket, int promised, double hours, int readyOn, double chanceLate) {}
}
