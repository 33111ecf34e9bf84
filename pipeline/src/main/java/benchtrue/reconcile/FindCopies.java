package benchtrue.reconcile;

import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.Kind;
import benchtrue.intake.columns.SourceColumn;
import benchtrue.intake.columns.TimeColumn;
import benchtrue.shop.Absent;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The same work in two files under other keys, or with keys in one of them only: a log exported twice. In the days that both
 * files cover, rows of the one that say the same as rows of the other are copies where nearly all do, or where both clock times
 * agree; elsewhere they are only listed, and weigh on what is judged.
 */
final class FindCopies {
    /** Share of the smaller file's rows in the days that both cover which makes a copy certain. */
    private static final double NEARLY_ALL = 0.9;

    private static final int FEWEST = 3;

    private final RowDispositions table;
    private final Column day;
    private final RowGroups groups;
    private final Map<Integer, int[]> first = new HashMap<>();
    private final Map<Long, Overlap> overlaps = new TreeMap<>();
    private final Map<Overlap, Boolean> certain = new HashMap<>();

    private FindCopies(RowDispositions table, List<Column> columns, Column day) {
        this.table = table;
        this.day = day;
        groups = new RowGroups(new Contents(table.rows(), columns));
    }

    /** What two files have in common. */
    private static final class Overlap {
        private final int older;
        private final int newer;
        private int from = Integer.MAX_VALUE;
        private int to = Integer.MIN_VALUE;
        private int matched;

        private Overlap(int older, int newer) {
            this.older = older;
            this.newer = newer;
        }
    }

    /**
     * Finds them in a table whose key is optional.
     *
     * @param day column of the day by which files overlap
     */
    static void mark(RowDispositions table, Column day) {
        List<Column> key = table.rows().table().key();
        List<Column> columns = table.rows().table().columns().stream()
                .filter(column ->
                        column.cell().kind() != Kind.PASSED && !key.contains(column) && column != TimeColumn.ENTERED_AT)
                .toList();
        if (table.rows().files().size() > 1) {
            new FindCopies(table, columns, day).mark();
        }
    }

    private void mark() {
        int[] twins = new int[table.size()];
        Map<Long, Integer> taken = new HashMap<>();
        for (int row = 0; row < twins.length; row++) {
            twins[row] = Absent.INDEX;
            if (table.accepted(row) && table.rows().readable(row) && !cameBack(row)) {
                match(row, twins, taken);
            }
        }
        overlaps.values().forEach(this::measure);
        for (int row = 0; row < twins.length; row++) {
            if (twins[row] != Absent.INDEX) {
                decide(row, twins[row]);
            }
        }
    }

    /** Who corrected a row meant this one. */
    private boolean cameBack(int row) {
        return table.rows().code(SourceColumn.SOURCE_FILE, row) != 0;
    }

    /** Pairs the n-th such row of a newer file with the n-th of the oldest file that has one. */
    private void match(int row, int[] twins, Map<Long, Integer> taken) {
        int file = table.file(row);
        int group = groups.group(row);
        int[] home = first.computeIfAbsent(group, fresh -> new int[] {file, 0, hasKey(row) ? 1 : 0});
        if (home[0] == file) {
            home[1]++;
            return;
        }
        if (home[2] == 0 && !hasKey(row)) {
            return; // Rows without a key were counted already, as many as the file with the most of them holds.
        }
        long place = ((long) group << 24) + file;
        int count = taken.merge(place, 1, Integer::sum);
        if (count <= home[1]) {
            twins[row] = home[0];
            Overlap overlap = overlaps.computeIfAbsent(pair(home[0], file), fresh -> new Overlap(home[0], file));
            int at = table.rows().day(day, row);
            overlap.matched++;
            overlap.from = Math.min(overlap.from, at);
            overlap.to = Math.max(overlap.to, at);
        }
    }

    private boolean hasKey(int row) {
        return table.rows().code(table.rows().table().key().get(0), row) != 0;
    }

    private static long pair(int older, int newer) {
        return ((long) older << 32) + newer;
    }

    /** Widens the days of an overlap to those that both files cover. */
    private void measure(Overlap overlap) {
        int[] older = days(overlap.older);
        int[] newer = days(overlap.newer);
        overlap.from = Math.max(older[0], newer[0]);
        overlap.to = Math.min(older[1], newer[1]);
    }

    private int[] days(int place) {
        int[] days = {Integer.MAX_VALUE, Integer.MIN_VALUE};
        InputFile file = table.rows().files().get(place);
        for (int row = file.firstRow(); row < file.firstRow() + file.rows(); row++) {
            int at = table.rows().day(day, row);
            if (table.accepted(row) && Absent.has(at)) {
                days[0] = Math.min(days[0], at);
                days[1] = Math.max(days[1], at);
            }
        }
        return days;
    }

    private int within(int place, Overlap overlap) {
        int count = 0;
        InputFile file = table.rows().files().get(place);
        for (int row = file.firstRow(); row < file.firstRow() + file.rows(); row++) {
            int at = table.rows().day(day, row);
            count += table.accepted(row) && at >= overlap.from && at <= overlap.to ? 1 : 0;
        }
        return count;
    }

    private boolean isCertain(Overlap overlap) {
        return certain.computeIfAbsent(overlap, fresh -> {
            int fewer = Math.min(within(overlap.older, overlap), within(overlap.newer, overlap));
            return overlap.matched >= FEWEST && overlap.matched >= NEARLY_ALL * fewer;
        });
    }

    private void decide(int row, int older) {
        Overlap overlap = overlaps.get(pair(older, table.file(row)));
        String other = table.rows().files().get(older).name();
        if (isCertain(overlap) || isClocked(row)) {
            table.decide(row, RowStatus.REPEATED);
            table.doubt(Doubt.SAME_WORK_TWICE, row, () -> "stands in " + other + " too");
        } else {
            table.mayBeCopy(row);
            table.doubt(Doubt.PERHAPS_TWICE, row, () -> "stands in " + other + " too");
        }
    }

    private boolean isClocked(int row) {
        return day == TimeColumn.WORK_DATE
                && table.rows().code(TimeColumn.START, row) != 0
                && table.rows().code(TimeColumn.END, row) != 0;
    }
}
