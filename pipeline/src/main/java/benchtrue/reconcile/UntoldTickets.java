package benchtrue.reconcile;

import benchtrue.intake.columns.TicketColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.Notice;
import benchtrue.shop.Ticket;
import benchtrue.shop.TicketStatus;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/**
 * What no file says of tickets, worked out from quotes and time log: opened on the first day quoted, else worked; finished on the
 * last day worked once nobody has worked on it for longer than nearly all pauses. Keeps what was worked out, to be told.
 */
final class UntoldTickets {
    /** Class of an instrument of which no file says it. */
    static final String CLASS = "instrument";

    private static final int EXAMPLES = 5;
    private final RowDispositions table;
    private final Supplier<TicketDays> reading;
    private final Set<String> opened = new LinkedHashSet<>();
    private final Set<String> closed = new LinkedHashSet<>();
    private Set<String> keys = Set.of();
    private TicketDays days;

    /**
     * Takes the tickets' rows.
     *
     * @param reading reads quotes and time log, which shops that say everything are spared
     */
    UntoldTickets(RowDispositions table, Supplier<TicketDays> reading) {
        this.table = table;
        this.reading = reading;
        if (table.rows().files().isEmpty()) {
            keys = derived();
        }
    }

    /** A ticket of the log alone whose key is a quoted one's but for signs, zeros and case is mistyped and no ticket. */
    private Set<String> derived() {
        Set<String> quoted = new HashSet<>();
        Map<String, TicketDays.Days> all = days().all();
        all.forEach((key, found) -> {
            if (found.onQuote()) {
                quoted.add(TicketKeys.NearKey.plain(key));
            }
        });
        Set<String> keys = new TreeSet<>();
        all.forEach((key, found) -> {
            if (found.onQuote() || !quoted.contains(TicketKeys.NearKey.plain(key))) {
                keys.add(key);
            }
        });
        return keys;
    }

    private TicketDays days() {
        if (days == null) {
            days = reading.get();
        }
        return days;
    }

    /** Returns the tickets that no tickets file names, where there is none. */
    Set<String> keys() {
        return keys;
    }

    Ticket ticket(String key) {
        int closed = closed(key);
        int opened = days().opened(key);
        return new Ticket(
                key,
                opened,
                Absent.DAY,
                closed,
                Absent.has(closed) ? Math.max(opened, last(key)) : Absent.DAY,
                Absent.has(closed) ? TicketStatus.CLOSED : TicketStatus.OPEN,
                CLASS,
                Absent.DAY,
                List.of(),
                "",
                Absent.INDEX);
    }

    int opened(String key) {
        int day = days().opened(key);
        if (!table.rows().has(TicketColumn.OPENED)) {
            opened.add(key + ": " + LocalDate.ofEpochDay(day));
        }
        return day;
    }

    int last(String key) {
        return days().last(key);
    }

    int closed(String key) {
        int day = days().doneBySilence(key);
        if (Absent.has(day)) {
            closed.add(key + ": last worked on " + LocalDate.ofEpochDay(last(key)));
            return Math.max(day, days().opened(key));
        }
        return day;
    }

    /** Returns what was worked out and rests on no file's word. */
    List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        if (!keys.isEmpty()) {
            long logOnly = keys.stream()
                    .filter(key -> !days().all().get(key).onQuote())
                    .count();
            add(
                    notices,
                    "tickets-from-quotes",
                    "There is no tickets file: tickets are those that quotes and time log name, opened on the day of their"
                            + " first quote, else of their first work. " + logOnly
                            + " of them stand in the time log alone; a mistyped one takes hours from another.",
                    keys);
        }
        add(
                notices,
                "opened-by-first-quote",
                "No file says when a ticket was opened: the day of its first quote counts, else of its first work.",
                opened);
        if (!closed.isEmpty()) {
            add(
                    notices,
                    "finished-by-silence",
                    "No file says when a ticket was finished: it counts as finished once nobody has worked on it for "
                            + days().silence() + " days, longer than nearly all of the " + days().pauses()
                            + " pauses that were seen. One that is taken up again later had too few hours till then. Another"
                            + " number of days: finished_after in shop.toml.",
                    closed);
        }
        if (!table.rows().has(TicketColumn.INSTRUMENT_CLASS)) {
            notices.add(new Notice(
                    "class-not-said",
                    "No file says the class of the instruments: all count as one class.",
                    1,
                    List.of()));
        }
        return notices;
    }

    private static void add(List<Notice> notices, String code, String words, Set<String> all) {
        if (!all.isEmpty()) {
            notices.add(new Notice(
                    code, words, all.size(), all.stream().limit(EXAMPLES).toList()));
        }
    }
}
