package benchtrue.shop;

import java.util.Arrays;
import java.util.List;

/**
 * One stretch of calendar time in which an instrument waited; never bench time.
 *
 * @param ticket index of the ticket
 * @param from first day
 * @param to last day, or {@link Absent#DAY} where it still waits
 * @param reason why
 */
public record Wait(int ticket, int from, int to, WaitReason reason) {
    /** Returns where each ticket's waits begin among some that stand by ticket, as {@link QuotedLines#starts} does for lines. */
    public static int[] starts(List<Wait> waits, int tickets) {
        int[] starts = new int[tickets + 1];
        waits.forEach(wait -> starts[wait.ticket() + 1]++);
        Arrays.parallelPrefix(starts, Integer::sum);
        return starts;
    }
}
