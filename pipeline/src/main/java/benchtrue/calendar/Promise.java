package benchtrue.calendar;

/**
 * An open ticket with a promised day. The bench is taken to work in the order of promised days (Jackson 1955), bench hours
 * alone: waiting for glue, finish, parts or a customer comes on top.
 *
 * @param ticket index of the ticket
 * @param promised day promised
 * @param hours expected bench hours still to do on it
 * @param readyOn day by which they are expected to be done, or {@link benchtrue.shop.Absent#DAY}
 * @param chanceLate chance that they are not done by the promised day, NaN where the weekly hours are not known
 */
public record Promise(int ticket, int promised, double hours, int readyOn, double chanceLate) {
    /** Returns whether it will more likely be broken than kept. */
    public boolean atRisk() {
        return chanceLate > 0.5;
    }
}
