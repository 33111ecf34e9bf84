package benchtrue.sample;

import java.util.List;

/**
 * One visit with what was done about it by the end of the history.
 *
 * @param visit as booked in
 * @param lines its lines, found ones with their day and quote; those not yet found are left out
 * @param loggedSeconds per line: bench time logged for it, whatever the label
 * @param sessions what the log holds
 * @param pauses what it waited for
 * @param finished day the bench work was done, {@link Bench#NEVER} where it was not
 * @param closed day it was collected, {@link Bench#NEVER} where it was not
 */
record Worked(
        Visit visit,
        List<Line> lines,
        long[] loggedSeconds,
        List<Session> sessions,
        List<Pause> pauses,
        int finished,
        int closed) {
    boolean isClosed() {
        return closed <= History.AS_OF && visit.fate() != Fate.VOID;
    }

    /** Returns whether a line, by its place, is evidence about its repair type. */
    boolean judged(int place) {
        return isClosed() && lines.get(place).judged() && !visit.back().putsRight();
    }
}
