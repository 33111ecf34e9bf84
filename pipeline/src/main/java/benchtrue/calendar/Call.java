package benchtrue.calendar;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * An open instrument about which somebody should be called.
 *
 * @param ticket index of the ticket
 * @param reasons why, at least one
 * @param repairs codes of the repair types on its accepted lines
 * @param quotedSeconds hours quoted on its open lines, as far as they are
 * @param secondsSoFar hours taken on those lines
 * @param expectedHours hours that those lines are expected to have taken in all
 * @param saves the money that is likely lost without the call, in ten-thousandths; 0 where none is known to be
 * @param worth what the ticket brings when it is handed over; absent where that is not known
 * @param why the reasons in a sentence
 * @param cost what it costs not to call, in a sentence
 * @param say what to say
 */
public record Call(
        int ticket,
        Set<Reason> reasons,
        List<Integer> repairs,
        long quotedSeconds,
        long secondsSoFar,
        double expectedHours,
        long saves,
        long worth,
        String why,
        String cost,
        String say) {
    public Call {
        reasons = Collections.unmodifiableSet(EnumSet.copyOf(reasons));
        repairs = List.copyOf(repairs);
    }

    /** Why to call; what is said first where both are worth alike. */
    public enum Reason {
        LIKELY_OVER,
        OVER_THE_QUOTE,
        NEVER_QUOTED,
        WAITS_FOR_APPROVAL,
        NOT_COLLECTED,
        OVERDUE,
        LIKELY_LATE,
        WAITS_TOO_LONG
    }
}
