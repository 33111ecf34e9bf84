package benchtrue.calendar;

import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.ChargeKind;
import benchtrue.shop.Hours;
import benchtrue.shop.TicketStatus;
import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** The calendar of every visit, and how much work stood before the bench on every day. All as known on that day. */
final class Visits {
    private static final int QUARTER = 91;
    private static final int WEEK = 7;
    private static final double LEAST_LEFT = 0.1;

    private final Ledger ledger;
    private final TicketDays days;
    private final int[][] types;
    private final double[] quoted;
    private final int first;
    private final double[] ahead;
    private final double[] worked;

    Visits(JobLines jobs, TicketDays days) {
        ledger = jobs.ledger();
        this.days = days;
        types = new int[ledger.tickets().size()][];
        quoted = new double[types.length];
        int[] starts = ledger.lines().starts(types.length);
        for (int ticket = 0; ticket < types.length; ticket++) {
            int[] lines = IntStream.range(starts[ticket], starts[ticket + 1])
                    .filter(this::isFirstWork)
                    .toArray();
            types[ticket] = IntStream.of(lines)
                    .boxed()
                    .sorted(Comparator.comparingDouble((Integer line) -> -hours(jobs, line)))
                    .mapToInt(ledger.lines()::repairType)
                    .distinct()
                    .toArray();
            quoted[ticket] =
                    IntStream.of(lines).mapToDouble(line -> hours(jobs, line)).sum();
        }
        first = IntStream.range(0, types.length)
                .map(ledger.tickets()::opened)
                .min()
                .orElse(ledger.asOf());
        ahead = new double[ledger.asOf() - first + 2];
        worked = new double[ahead.length];
        IntStream.range(0, types.length).forEach(this::follow);
        Arrays.parallelPrefix(ahead, Double::sum);
        Arrays.parallelPrefix(worked, Double::sum);
    }

    /** Wanted bench work that was quoted when the instrument came in. */
    private boolean isFirstWork(int line) {
        ChargeKind kind = ledger.lines().chargeKind(line);
        boolean later = Absent.has(ledger.lines().quotedOn(line))
                && ledger.lines().quotedOn(line)
                        > ledger.tickets().opened(ledger.lines().ticket(line));
        return OpenTickets.isWanted(ledger, line)
                && !later
                && kind != ChargeKind.RUSH
                && kind != ChargeKind.STORAGE
                && kind != ChargeKind.OUTSIDE_WORK;
    }

    private double hours(JobLines jobs, int line) {
        long seconds = ledger.lines().judgedSeconds(line) > 0
                ? ledger.lines().judgedSeconds(line)
                : jobs.bookSecondsThen(line);
        return Absent.has(seconds) ? Hours.of(seconds) : 0;
    }

    private void follow(int ticket) {
        int opened = ledger.tickets().opened(ticket);
        int end = Math.max(opened, Absent.firstOf(ready(ticket), Absent.firstOf(gone(ticket), ledger.asOf() + 1)));
        double left = quoted[ticket];
        ahead[opened - first] += left;
        for (int sitting = days.from(ticket); sitting < days.to(ticket); sitting++) {
            int at = Math.max(first, days.day(sitting)) - first;
            double hours = Hours.of(days.seconds(sitting));
            if (at < ahead.length) {
                worked[at] += hours;
            }
            if (days.day(sitting) >= opened && days.day(sitting) < end) {
                ahead[at] -= Math.min(left, hours);
                left -= Math.min(left, hours);
            }
        }
        if (end <= ledger.asOf()) {
            ahead[end - first] -= left;
        }
    }

    int size() {
        return types.length;
    }

    int opened(int ticket) {
        return ledger.tickets().opened(ticket);
    }

    /** Returns the day a visit was ready, or {@link Absent#DAY}; one that nobody wanted work on never is. */
    int ready(int ticket) {
        return types[ticket].length == 0 || ledger.tickets().status(ticket) == TicketStatus.VOID
                ? Absent.DAY
                : days.ready(ticket);
    }

    /** Returns the day a visit ended without work, as far as it is known, or {@link Absent#DAY}. */
    int gone(int ticket) {
        boolean unwanted = types[ticket].length == 0 || ledger.tickets().status(ticket) == TicketStatus.VOID;
        return unwanted
                ? Absent.firstOf(ledger.tickets().closed(ticket), Absent.firstOf(days.last(ticket), opened(ticket)))
                : Absent.DAY;
    }

    /** Returns the repairs quoted when it came in, the largest first. */
    int[] types(int ticket) {
        return types[ticket];
    }

    /** Returns the largest repair, or {@link Absent#INDEX} where nobody wanted any. */
    int largest(int ticket) {
        return types[ticket].length == 0 ? Absent.INDEX : types[ticket][0];
    }

    /** Returns the days until work on a ready visit began, without those on which it waited for something of its own. */
    int begin(int ticket) {
        int opened = opened(ticket);
        int begun = Math.max(opened, Math.min(ready(ticket), days.first(ticket)));
        return begun - opened - days.waited(ticket, opened, begun, TicketDays.OF_ITS_OWN);
    }

    /** Returns the days that a ready visit waited for something of its own: humidity, glue, finish, parts, a yes. */
    int waited(int ticket) {
        return days.waited(ticket, opened(ticket), ready(ticket), TicketDays.OF_ITS_OWN);
    }

    /** Returns the other days of a ready visit: those of the bench, from the first hour to the last. */
    int bench(int ticket) {
        return Math.max(0, ready(ticket) - opened(ticket) - begin(ticket) - waited(ticket));
    }

    /** Returns the hours quoted when it came in. */
    double quoted(int ticket) {
        return quoted[ticket];
    }

    /** Returns the hours worked on a visit by the end of a day. */
    double worked(int ticket, int day) {
        long seconds = 0;
        for (int sitting = days.from(ticket); sitting < days.to(ticket) && days.day(sitting) <= day; sitting++) {
            seconds += days.seconds(sitting);
        }
        return Hours.of(seconds);
    }

    /** Returns the hours still to do at the end of a day; what is quoted is never quite done before it is ready. */
    double left(int ticket, int day) {
        return Math.max(quoted(ticket) - worked(ticket, day), LEAST_LEFT * quoted(ticket));
    }

    /** Returns whether a visit had been worked on by the end of a day. */
    boolean begun(int ticket, int day) {
        return days.begun(ticket) && days.first(ticket) <= day;
    }

    /** Returns the days until work on a visit began, up to a day, without those on which it waited for something of its own. */
    int queued(int ticket, int day) {
        int opened = opened(ticket);
        int end = Math.max(opened, begun(ticket, day) ? days.first(ticket) : day);
        return end - opened - days.waited(ticket, opened, end, TicketDays.OF_ITS_OWN);
    }

    /** Returns the visits with work that came in last by a day. */
    int[] latest(int day, int most) {
        int[] all = IntStream.range(0, types.length)
                .filter(ticket -> opened(ticket) <= day && !Absent.has(gone(ticket)))
                .boxed()
                .sorted(Comparator.comparingInt(this::opened))
                .mapToInt(Integer::intValue)
                .toArray();
        return Arrays.copyOfRange(all, Math.max(0, all.length - most), all.length);
    }

    TicketDays days() {
        return days;
    }

    /** Returns the bench hours a week of the quarter up to a day. */
    double weekly(int day) {
        int at = Math.max(0, Math.min(worked.length - 1, day - first));
        int from = at - QUARTER;
        return (worked[at] - (from < 0 ? 0 : worked[from])) * WEEK / Math.max(WEEK, Math.min(QUARTER, at + 1));
    }

    /** Returns the calendar days that the work quoted and not yet done on a day would take the whole bench. */
    double queue(int day) {
        double weekly = weekly(day);
        int at = Math.max(0, Math.min(ahead.length - 1, day - first));
        return weekly > 0 ? Math.max(0, ahead[at]) / weekly * WEEK : 0;
    }
}
