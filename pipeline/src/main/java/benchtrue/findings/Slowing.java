package benchtrue.findings;

/**
 * A repair type that takes longer than it used to.
 *
 * @param repairType code of the repair type
 * @param standing how surely
 * @param startDay day the first slower job was opened, as the records have it most probable
 * @param alarmDay day the job was opened that gave the signal
 * @param jobsBefore jobs with hours of their own before the start
 * @param jobsSince such jobs since
 * @param change hours since over hours before, the mix of people, instruments and quotes apart
 * @param lower lower end of its 90 % interval
 * @param upper upper end
 * @param loadSince load factor of the jobs opened since, leaning on the one before; NaN where too few
 */
public record Slowing(
        int repairType,
        Standing standing,
        int startDay,
        int alarmDay,
        int jobsBefore,
        int jobsSince,
        double change,
        double lower,
        double upper,
        double loadSince) {

    /** Returns this slowing with the load factor of the jobs since. */
    Slowing withLoadSince(double load) {
        return new Slowing(repairType, standing, startDay, alarmDay, jobsBefore, jobsSince, change, lower, upper, load);
    }

    /** How surely the repair got slower. */
    public enum Standing {
        /** The chart gave its signal; too few jobs have been opened since to bear it out. */
        SIGNALLED,
        /** Jobs opened after the signal bear it out: verdict and money are of the jobs since the start. */
        CONFIRMED
    }
}
