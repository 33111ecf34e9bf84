package benchtrue.hours;

import benchtrue.hours.EntryPlaces.Place;
import benchtrue.shop.Balance;
import benchtrue.shop.TimeKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Where each entry went and what that adds up to; filled by {@link PlaceEntries} and {@link ShareEntries}. */
final class PlacedTime {
    /** By entry. */
    final byte[] place;
    /** By entry: the line, where the place is {@link Place#ON_LINE}. */
    final int[] line;
    /** By line: seconds of entries that name it. */
    final long[] labelledSeconds;
    /** By line: seconds of entries that name its repair type where several lines or tickets share them. */
    final long[] dealtSeconds;
    /** By ticket: seconds to be split over its lines. */
    final long[] wholeSeconds;
    /** By ticket: seconds that find no accepted line. */
    final long[] withoutLineSeconds;
    /** By ticket and repair type, see {@link #key}. */
    final TreeMap<Long, Long> unquotedSeconds = new TreeMap<>();
    /** By entry: seconds of each ticket that shares it. */
    final TreeMap<Integer, long[]> sharedSeconds = new TreeMap<>();

    /** By kind of time, for what stands apart from lines. */
    final long[] kindSeconds = new long[TimeKind.values().length];
    /** Not positive: corrections that found no hours to cancel. */
    long unmatchedSeconds;

    PlacedTime(int entries, int lines, int tickets) {
        place = new byte[entries];
        line = new int[entries];
        labelledSeconds = new long[lines];
        dealtSeconds = new long[lines];
        wholeSeconds = new long[tickets];
        withoutLineSeconds = new long[tickets];
    }

    static long key(int ticket, int repairType) {
        return ((long) ticket << Integer.SIZE) | repairType;
    }

    /** Returns the seconds that are known to be a line's before anything is split. */
    long floorSeconds(int line) {
        return labelledSeconds[line] + dealtSeconds[line];
    }

    /** Returns whether a ticket has bench time on or for its lines. */
    boolean logged(LineFacts facts, int ticket) {
        long seconds = wholeSeconds[ticket];
        for (int l = facts.starts[ticket]; l < facts.starts[ticket + 1]; l++) {
            seconds += floorSeconds(l);
        }
        return seconds > 0;
    }

    void addUnquoted(int ticket, int repairType, long seconds) {
        unquotedSeconds.merge(key(ticket, repairType), seconds, Math::addExact);
    }

    List<UnquotedWork> unquoted() {
        List<UnquotedWork> rows = new ArrayList<>();
        for (Map.Entry<Long, Long> row : unquotedSeconds.entrySet()) {
            if (row.getValue() != 0) {
                long key = row.getKey();
                rows.add(new UnquotedWork((int) (key >> Integer.SIZE), (int) key, row.getValue()));
            }
        }
        return rows;
    }

    /** Returns where all seconds went. */
    List<Balance.Term> terms() {
        List<Balance.Term> terms = new ArrayList<>();
        terms.add(new Balance.Term("on lines", sum(labelledSeconds) + sum(dealtSeconds) + sum(wholeSeconds)));
        terms.add(new Balance.Term(
                "unquoted work",
                unquotedSeconds.values().stream().mapToLong(Long::longValue).sum()));
        terms.add(new Balance.Term("on tickets without an accepted line", sum(withoutLineSeconds)));
        terms.add(new Balance.Term("handling", kindSeconds[TimeKind.HANDLING.ordinal()]));
        terms.add(new Balance.Term("quoting", kindSeconds[TimeKind.QUOTING.ordinal()]));
        terms.add(new Balance.Term("shop", kindSeconds[TimeKind.SHOP.ordinal()]));
        if (unmatchedSeconds != 0) {
            terms.add(new Balance.Term("corrections without hours to cancel", unmatchedSeconds));
        }
        return terms;
    }

    private static long sum(long[] seconds) {
        return Arrays.stream(seconds).reduce(0, Math::addExact);
    }
}
