package benchtrue.reconcile;

import benchtrue.shop.Months;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How much of what was logged could be read. Hours of entries whose number can't be read are taken at the mean of those that
 * can.
 *
 * @param readSeconds hours that count
 * @param unreadSeconds hours set aside
 * @param reason what most of the unread hours have in common, in words; empty where nothing is unread
 * @param months unread and read seconds by month ({@code year * 12 + month - 1}), months with unread hours only
 * @param technicians the same by technician as the rows name them
 * @param missing by repair-type code, unread bench seconds that belong to the repair as far as the rows say
 * @param foreign by repair-type code, seconds on the repair's tickets that may be those of a quoted line that was not read
 * @param missingAnywhere unread bench seconds of which no row says to which repair they belong
 * @param most share of a month's hours that may be unread before its jobs are left out of what is tried and watched
 * @param tables rows read and set aside by table, tables with rows set aside only
 */
public record Completeness(
        long readSeconds,
        double unreadSeconds,
        String reason,
        SortedMap<Integer, Part> months,
        SortedMap<String, Part> technicians,
        double[] missing,
        double[] foreign,
        double missingAnywhere,
        double most,
        List<RowsRead> tables) {
    /** Share of all logged hours beyond which nothing is judged. */
    public static final double MOST_OF_ALL = 0.2;

    /** Nothing was set aside. */
    public static final Completeness WHOLE =
            new Completeness(0, 0, "", new TreeMap<>(), new TreeMap<>(), new double[0], new double[0], 0, 1, List.of());

    /** Seconds unread and read. */
    public record Part(double unread, double read) {
        /** Returns the share that is unread. */
        public double share() {
            return unread / (unread + read);
        }

        Part plus(Part other) {
            return new Part(unread + other.unread, read + other.read);
        }
    }

    /** Rows of a table that were read and set aside, with the commonest reason. */
    public record RowsRead(String table, long read, long setAside, String reason) {}

    public Completeness {
        months = new TreeMap<>(months);
        technicians = new TreeMap<>(technicians);
        tables = List.copyOf(tables);
    }

    /** Returns the share of all logged hours that could not be read. */
    public double unreadShare() {
        double all = unreadSeconds + readSeconds;
        return all > 0 ? unreadSeconds / all : 0;
    }

    /** Returns whether so much is unread that nothing can be judged. */
    public boolean tooLittle() {
        return unreadShare() > MOST_OF_ALL;
    }

    /**
     * Returns seconds that may be missing from a repair, over the seconds that it has.
     *
     * @param own the repair's seconds
     * @param all seconds of all repairs
     */
    public double missingOver(int type, double own, double all) {
        double named = type < missing.length ? missing[type] : 0;
        double anywhere = all > 0 ? missingAnywhere / all : 0;
        return own > 0 ? named / own + anywhere : named > 0 ? Double.POSITIVE_INFINITY : anywhere;
    }

    /** Returns the share of a repair's seconds that may belong to lines that were not read. */
    public double foreignShare(int type, double own) {
        double seconds = type < foreign.length ? foreign[type] : 0;
        return own > 0 ? Math.min(1, seconds / own) : 0;
    }

    /** Returns whether months of which too much is unread lie between two days. */
    public boolean touches(int from, int to) {
        if (months.isEmpty()) {
            return false;
        }
        return months.subMap(month(from), month(Math.max(from, to)) + 1).values().stream()
                .anyMatch(part -> part.share() > most);
    }

    private static int month(int day) {
        return Months.of(day);
    }

    /** Returns the same without what hangs on codes of repairs, for a ledger of an earlier day. */
    public Completeness earlier() {
        return new Completeness(0, 0, "", months, new TreeMap<>(), new double[0], new double[0], 0, most, List.of());
    }
}
