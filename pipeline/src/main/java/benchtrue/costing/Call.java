package benchtrue.costing;

import java.util.EnumSet;
import java.util.Set;

/**
 * An open instrument whose owner should be called before more work is done.
 *
 * @param ticket index of the ticket
 * @param reasons why, at least one
 * @param quotedSeconds hours quoted on its open lines, as far as they are
 * @param secondsSoFar hours taken on those lines
 * @param expectedHours hours that those lines are expected to have taken in all
 * @param moreMoney the hours expected beyond the quote at the posted rate, in ten-thousandths; 0 where none are
 */
public record Call(
        int ticket, Set<Reason> reasons, long quotedSeconds, long secondsSoFar, double expectedHours, long moreMoney) {
    public Call {
        reasons = java.util.Collections.unmodifiableSet(EnumSet.copyOf(reasons));
    }

    /** Why to call. */
    public enum Reason {
        OVER_THE_QUOTE("a line has used up its quoted hours"),
        LIKELY_OVER("a line will more likely than not need a quarter more than quoted"),
        WAITS_FOR_APPROVAL("it waits for the customer's approval"),
        OVERDUE("its promised day is past"),
        LIKELY_LATE("its promised day will likely be missed");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        /** Returns the reason as a person reads it. */
        public String words() {
            return words;
        }
    }
}
