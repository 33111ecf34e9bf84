package benchtrue.calendar;

/**
 * An open ticket with a promised day.
 *
 * @param ticket index of the ticket
 * @param promised day promised
 * @param hours expected bench hours still to do on it
 * @param readyOn day to promise today, kept four times in five, or {@link benchtrue.shop.Absent#DAY}
 * @param chanceLate chance that it is not ready by the promised day, waiting included; where past visits do not tell that, the
 *     chance that its bench hours are not done, and NaN where the weekly hours are not known either
 */
public record Promise(int ticket, int promised, double hours, int readyOn, double chanceLate) {
    /** Returns whether it will more likely be broken than kept. */
    public boolean atRisk() {
        return chanceLate > 0.5;
    }
}
