package benchtrue.revision;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeEntry;
import benchtrue.shop.Wait;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Time worked and waited by the end of an earlier day, on the visits and lines that stood then. */
final class TimeAsOf {
    private final Ledger ledger;
    private final int day;
    private final int[] ticketThen;
    private final int[] lineThen;

    /**
     * Takes where rows stand then.
     *
     * @param ticketThen by ticket, its row then or {@link Absent#INDEX}
     * @param lineThen by line, likewise
     */
    TimeAsOf(Ledger ledger, int day, int[] ticketThen, int[] lineThen) {
        this.ledger = ledger;
        this.day = day;
        this.ticketThen = ticketThen;
        this.lineThen = lineThen;
    }

    TimeEntries entries() {
        TimeEntries.Builder rows = new TimeEntries.Builder();
        TimeEntries time = ledger.time();
        for (int entry = 0; entry < time.size(); entry++) {
            if (time.workDay(entry) > day) {
                continue;
            }
            if (time.ticket(entry) == TimeEntries.SHARED) {
                addShared(rows, entry);
            } else if (time.ticket(entry) < 0 || ticketThen[time.ticket(entry)] >= 0) {
                rows.add(then(entry, LedgerAsOf.then(ticketThen, time.ticket(entry))));
            }
        }
        return rows.build();
    }

    /** An entry over several visits stays one where a single visit is left, so that the order of entries holds. */
    private void addShared(TimeEntries.Builder rows, int entry) {
        int[] standing = Arrays.stream(ledger.time().sharedTickets(entry))
                .map(ticket -> ticketThen[ticket])
                .filter(ticket -> ticket >= 0)
                .toArray();
        if (standing.length > 0) {
            rows.addShared(then(entry, TimeEntries.SHARED), standing);
        }
    }

    /** Work on a line that was quoted later was work of its repair type, not yet quoted. */
    private TimeEntry then(int entry, int ticket) {
        TimeEntry row = ledger.time().get(entry);
        int line = LedgerAsOf.then(lineThen, row.line());
        boolean notYet = row.line() >= 0 && line < 0 && row.repairType() < 0;
        int type = notYet ? ledger.lines().repairType(row.line()) : row.repairType();
        return new TimeEntry(ticket, line, type, row.technician(), row.workDay(), row.seconds(), row.kind());
    }

    List<Wait> waits() {
        List<Wait> waits = new ArrayList<>();
        for (Wait wait : ledger.waits()) {
            if (wait.from() <= day && ticketThen[wait.ticket()] >= 0) {
                boolean over = Absent.has(wait.to()) && wait.to() <= day;
                waits.add(
                        new Wait(ticketThen[wait.ticket()], wait.from(), over ? wait.to() : Absent.DAY, wait.reason()));
            }
        }
        return waits;
    }
}
