package benchtrue.calendar;

import benchtrue.shop.Absent;
import benchtrue.shop.Ints;
import java.util.stream.IntStream;

/**
 * Visits that were begun, as they stood week by week, none left lying: what these took from there says more of one that is half
 * done than whole visits do (landmarks, van Houwelingen 2007).
 */
final class Halfway {
    private static final int WEEK = 7;

    private final Visits visits;
    private final int today;
    private final Ints tickets = new Ints();
    private final Ints days = new Ints();
    private final Ordered byHours;

    /** Takes visits, with what was known of them on a day. */
    Halfway(Visits visits, int[] all, int today) {
        this.visits = visits;
        this.today = today;
        for (int ticket : all) {
            int from = Math.max(visits.days().first(ticket), visits.opened(ticket) + 1) + Math.floorMod(ticket, WEEK);
            for (int day = from; visits.begun(ticket, today) && day < end(ticket); day += WEEK) {
                if (visits.days().pause(ticket, day) <= UsualLengths.SHORT_PAUSE) {
                    tickets.add(ticket);
                    days.add(day);
                }
            }
        }
        byHours = Ordered.by(IntStream.range(0, days.size())
                .mapToDouble(i -> StrictMath.log1p(visits.left(tickets.get(i), days.get(i))))
                .toArray());
    }

    private int end(int ticket) {
        return Math.min(today, Absent.firstOf(visits.ready(ticket), today));
    }

    /** Returns the chances of bench days from now on, of one with so many hours to do. */
    DayChances ahead(double hours) {
        Stretches left = new Stretches();
        for (int i : byHours.nearest(StrictMath.log1p(hours))) {
            int ticket = tickets.get(i);
            int day = days.get(i);
            int rest = end(ticket) - day - visits.days().waited(ticket, day, end(ticket), TicketDays.OF_ITS_OWN);
            int ready = visits.ready(ticket);
            left.add(rest, Absent.has(ready) && ready <= today);
        }
        return DayChances.of(left.curve());
    }
}
