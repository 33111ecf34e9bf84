package benchtrue.calendar;

import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.TicketStatus;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.TimeKind;
import benchtrue.shop.Wait;
import benchtrue.shop.WaitReason;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** On which days each ticket was worked on, for what it waited, and when it was ready. Calendar days, by ticket. */
final class TicketDays {
    /** What keeps an instrument from the bench: all but waiting for its owner. */
    static final Set<WaitReason> BEFORE_READY =
            Collections.unmodifiableSet(EnumSet.complementOf(EnumSet.of(WaitReason.PICK_UP)));

    /** What has its own time, however free the bench is. */
    static final Set<WaitReason> OF_ITS_OWN =
            Collections.unmodifiableSet(EnumSet.complementOf(EnumSet.of(WaitReason.PICK_UP, WaitReason.BENCH)));

    private final Ledger ledger;
    private final int[] starts;
    private final int[] days;
    private final long[] seconds;
    private final int[] waits;

    private TicketDays(JobLines jobs) {
        ledger = jobs.ledger();
        starts = new int[ledger.tickets().size() + 2];
        eachSitting(jobs, (ticket, day, worked) -> starts[ticket + 2]++);
        for (int ticket = 2; ticket < starts.length; ticket++) {
            starts[ticket] += starts[ticket - 1];
        }
        days = new int[starts[starts.length - 1]];
        seconds = new long[days.length];
        eachSitting(jobs, this::insert);
        waits = Wait.starts(ledger.waits(), ledger.tickets().size());
    }

    static TicketDays of(JobLines jobs) {
        return new TicketDays(jobs);
    }

    private interface Sitting {
        void take(int ticket, int day, long seconds);
    }

    /** Hands over every stretch of bench time on a ticket. */
    private static void eachSitting(JobLines jobs, Sitting sink) {
        TimeEntries time = jobs.ledger().time();
        for (int entry = 0; entry < time.size(); entry++) {
            if (time.kind(entry) != TimeKind.BENCH || time.seconds(entry) <= 0) {
                continue;
            }
            int day = time.workDay(entry);
            if (time.ticket(entry) >= 0) {
                sink.take(time.ticket(entry), day, time.seconds(entry));
            } else if (time.ticket(entry) == TimeEntries.SHARED) {
                int[] tickets = time.sharedTickets(entry);
                long[] parts = jobs.places().sharedSeconds(entry);
                for (int i = 0; i < tickets.length; i++) {
                    sink.take(tickets[i], day, parts[i]);
                }
            }
        }
    }

    /** Entries come by ticket and day but for those over several tickets, so that few have to be moved. */
    private void insert(int ticket, int day, long worked) {
        int at = starts[ticket + 1]++;
        while (at > starts[ticket] && days[at - 1] > day) {
            days[at] = days[at - 1];
            seconds[at] = seconds[at - 1];
            at--;
        }
        days[at] = day;
        seconds[at] = worked;
    }

    /** Returns the place of a ticket's first sitting; those of one ticket stand together, by day. */
    int from(int ticket) {
        return starts[ticket];
    }

    /** Returns the place after a ticket's last sitting. */
    int to(int ticket) {
        return starts[ticket + 1];
    }

    int day(int sitting) {
        return days[sitting];
    }

    long seconds(int sitting) {
        return seconds[sitting];
    }

    boolean begun(int ticket) {
        return to(ticket) > from(ticket);
    }

    /** Returns the first day that the ticket was worked on, or {@link Absent#DAY}. */
    int first(int ticket) {
        return begun(ticket) ? days[from(ticket)] : Absent.DAY;
    }

    /** Returns the last day that the ticket was worked on, or {@link Absent#DAY}. */
    int last(int ticket) {
        return begun(ticket) ? days[to(ticket) - 1] : Absent.DAY;
    }

    /** Returns the days by a day since a begun ticket was worked on, without those on which it waited. */
    int pause(int ticket, int day) {
        int last = first(ticket);
        for (int sitting = from(ticket); sitting < to(ticket) && day(sitting) <= day; sitting++) {
            last = day(sitting);
        }
        return day - last - waited(ticket, last, day, BEFORE_READY);
    }

    /** Returns the day the ticket was ready to be collected, or {@link Absent#DAY} where it is not or nobody knows. */
    int ready(int ticket) {
        int finished = ledger.tickets().finished(ticket);
        if (Absent.has(finished)) {
            return finished;
        }
        return ledger.tickets().status(ticket) == TicketStatus.CLOSED
                ? ledger.tickets().closed(ticket)
                : Absent.DAY;
    }

    /** Returns what the ticket waited for, in the order of days. */
    List<Wait> waits(int ticket) {
        return ledger.waits().subList(waits[ticket], waits[ticket + 1]);
    }

    /** Returns the days after one day and up to another on which the ticket is recorded as waiting for one of some reasons. */
    int waited(int ticket, int after, int upTo, Set<WaitReason> reasons) {
        int days = 0;
        int counted = after;
        for (Wait wait : waits(ticket)) {
            int end = Math.min(upTo, Absent.firstOf(wait.to(), upTo));
            int begin = Math.max(counted, wait.from());
            if (reasons.contains(wait.reason()) && end > begin) {
                days += end - begin;
                counted = end;
            }
        }
        return days;
    }
}
