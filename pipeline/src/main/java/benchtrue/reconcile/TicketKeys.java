package benchtrue.reconcile;

import benchtrue.intake.TextColumn;
import benchtrue.intake.columns.TicketColumn;
import benchtrue.shop.Absent;
import benchtrue.shop.Tickets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds tickets by their keys, exactly as written; near misses are only suggested. */
final class TicketKeys {
    /** The ticket lies after the as-of date. */
    static final int AFTER = -4;

    /** No such ticket can be used. */
    static final int UNKNOWN = -5;

    private final Map<String, Integer> places = new HashMap<>();
    private final Map<String, String> plain = new HashMap<>();
    private final Tickets tickets;

    TicketKeys(Tickets tickets, RowDispositions table) {
        this.tickets = tickets;
        for (int ticket = 0; ticket < tickets.size(); ticket++) {
            places.put(tickets.ticket(ticket), ticket);
        }
        for (int row = 0; row < table.size(); row++) {
            if (table.fate(row) == RowStatus.AFTER) {
                places.put(table.rows().text(TicketColumn.TICKET, row), AFTER);
            }
        }
    }

    /** Returns the index of a ticket, {@link #AFTER} or {@link #UNKNOWN}; {@link Absent#INDEX} for an empty key. */
    int find(String key) {
        return key.isEmpty() ? Absent.INDEX : places.getOrDefault(key, UNKNOWN);
    }

    /** Returns what {@link #find} says for each code of a column. */
    int[] find(TextColumn column) {
        return column.each(this::find);
    }

    /** Returns what to expect in place of a key that is unknown, with the nearest one there is. */
    String expected(String key) {
        return "a ticket of the table tickets"
                + nearest(key)
                        .map(near -> " (the nearest there is \"" + near + "\")")
                        .orElse("");
    }

    /** Several tables ask at once. */
    private synchronized Optional<String> nearest(String key) {
        if (plain.isEmpty()) {
            for (int ticket = tickets.size() - 1; ticket >= 0; ticket--) {
                plain.put(NearKey.plain(tickets.ticket(ticket)), tickets.ticket(ticket));
            }
        }
        return Optional.ofNullable(plain.get(NearKey.plain(key)));
    }

    /** What is left of a key when everything is taken off that people mistype. */
    static final class NearKey {
        private static final Pattern LEADING_ZEROS = Pattern.compile("(?<![0-9])0+(?=[0-9])");
        private static final Pattern SIGNS = Pattern.compile("[^\\p{L}\\p{N}]");

        private NearKey() {}

        /** Returns a key without case, blanks, signs and leading zeros. */
        static String plain(String key) {
            String letters = SIGNS.matcher(key.toUpperCase(Locale.ROOT)).replaceAll("");
            return LEADING_ZEROS.matcher(letters).replaceAll("");
        }
    }
}
