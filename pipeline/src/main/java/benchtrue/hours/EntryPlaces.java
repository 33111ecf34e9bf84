package benchtrue.hours;

import benchtrue.shop.Absent;
import java.util.Map;

/** Where each time entry went, by its row in the ledger's time, so that wages can follow the hours. */
public final class EntryPlaces {
    private static final Place[] PLACES = Place.values();
    private final byte[] place;
    private final int[] line;
    private final Map<Integer, long[]> sharedSeconds;

    /** Where an entry went. */
    public enum Place {
        /** To the line it names, or the one line it can only mean. */
        ON_LINE,
        /** Dealt over its ticket's lines. */
        OVER_TICKET,
        /** Dealt over several tickets, then over their lines. */
        OVER_TICKETS,
        /** To a repair type that its ticket never quoted. */
        UNQUOTED,
        /** To a ticket without an accepted line. */
        WITHOUT_LINE,
        /** To no line: handling, quoting or shop time, as its kind says. */
        BY_KIND
    }

    /**
     * Takes columns by entry, handed over, not shared.
     *
     * @param place ordinal of the {@link Place} of each entry
     * @param line index of the line of each entry that is {@link Place#ON_LINE}, else {@link Absent#INDEX}
     * @param sharedSeconds seconds on each ticket of an entry that is {@link Place#OVER_TICKETS}, in the order of its
     *     tickets; they sum to the entry's
     */
    EntryPlaces(byte[] place, int[] line, Map<Integer, long[]> sharedSeconds) {
        this.place = place;
        this.line = line;
        this.sharedSeconds = Map.copyOf(sharedSeconds);
    }

    /** Returns where an entry went. */
    public Place place(int entry) {
        return PLACES[place[entry]];
    }

    /** Returns the line an entry went to, or {@link Absent#INDEX} where it went to none or several. */
    public int line(int entry) {
        return line[entry];
    }

    /** Returns the seconds on each ticket of an entry over several, in the order of its tickets. */
    public long[] sharedSeconds(int entry) {
        return sharedSeconds.get(entry).clone();
    }
}
