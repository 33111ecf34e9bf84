package benchtrue.shop;

/**
 * One stretch of one technician's time.
 *
 * @param ticket index of the ticket, {@link Absent#INDEX} without one, {@link TimeEntries#SHARED} where several share it
 * @param line index of the line named, or {@link Absent#INDEX}
 * @param repairType code of the repair type named, or {@link Absent#INDEX}
 * @param technician code of the technician
 * @param seconds time worked; negative only on the cancelling half of a pair
 */
public record TimeEntry(
        int ticket, int line, int repairType, int technician, int workDay, long seconds, TimeKind kind) {}
