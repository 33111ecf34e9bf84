package benchtrue.shop;

/**
 * One stretch of calendar time in which an instrument waited; never bench time.
 *
 * @param ticket index of the ticket
 * @param from first day
 * @param to last day, or {@link Absent#DAY} where it still waits
 * @param reason why
 */
public record Wait(int ticket, int from, int to, WaitReason reason) {}
