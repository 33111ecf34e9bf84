package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.Column;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** A table's rows and what became of each; filled stage by stage, then only read. */
final class RowDispositions {
    private static final RowStatus[] FATES = RowStatus.values();
    private final TableRows rows;
    private final Doubts doubts = new Doubts();
    private final List<Doubtful> doubtful = new ArrayList<>();
    private final byte[] fates;
    private final Map<Integer, List<String>> reasons = new HashMap<>();
    private final Map<Integer, Integer> places = new HashMap<>();
    private final Map<Integer, Integer> older = new HashMap<>();
    private final BitSet perhapsCopies = new BitSet();

    RowDispositions(TableRows rows) {
        this.rows = rows;
        fates = new byte[rows.size()];
    }

    TableRows rows() {
        return rows;
    }

    Doubts doubts() {
        return doubts;
    }

    int size() {
        return fates.length;
    }

    RowStatus fate(int row) {
        return FATES[fates[row]];
    }

    /** Returns how many rows came to one end. */
    long count(RowStatus status) {
        long count = 0;
        for (byte fate : fates) {
            count += fate == status.ordinal() ? 1 : 0;
        }
        return count;
    }

    void decide(int row, RowStatus fate) {
        fates[row] = (byte) fate.ordinal();
    }

    boolean accepted(int row) {
        return fates[row] == 0;
    }

    /** Sets every row aside that has a cell that can't be used. */
    void setAsideUnreadable() {
        for (int row = 0; row < fates.length; row++) {
            if (accepted(row) && !rows.readable(row)) {
                decide(row, RowStatus.SET_ASIDE);
            }
        }
    }

    /** Returns whether a row still needs its checks: those set aside get all their reasons, not only the first. */
    boolean inQuestion(int row) {
        return fates[row] == 0 || fates[row] == RowStatus.SET_ASIDE.ordinal() && rows.raggedDigest(row) == 0;
    }

    void setAside(int row, Column column, String found, String expected) {
        String what = found.isEmpty() ? "empty" : "found \"" + found + "\"";
        decide(row, RowStatus.SET_ASIDE);
        reasons.computeIfAbsent(row, first -> new ArrayList<>(1))
                .add(column.header() + ": " + what + ", expected " + expected);
    }

    /** Keeps a row out of every figure because it lies after the as-of date, unless it is set aside. */
    void after(int row) {
        if (accepted(row)) {
            decide(row, RowStatus.AFTER);
            doubt(Doubt.AFTER_AS_OF, row);
        }
    }

    void doubt(Doubt doubt, int row) {
        doubtful.add(new Doubtful(doubt, row));
        doubts.add(doubt, () -> rows.place(row));
    }

    void doubt(Doubt doubt, int row, Supplier<String> more) {
        doubtful.add(new Doubtful(doubt, row));
        doubts.add(doubt, () -> rows.place(row) + ": " + more.get());
    }

    /** Notes that a row may say again what a row of another file says. */
    void mayBeCopy(int row) {
        perhapsCopies.set(row);
    }

    /** Returns the rows that may say again what rows of other files say. */
    BitSet perhapsCopies() {
        return perhapsCopies;
    }

    /** A row and what is doubtful about it. */
    private record Doubtful(Doubt doubt, int row) {}

    /** Returns the doubtful rows, by their place. */
    List<DoubtfulRow> doubtful() {
        return doubtful.stream()
                .sorted(Comparator.comparingInt(Doubtful::row).thenComparing(Doubtful::doubt))
                .map(found -> new DoubtfulRow(
                        rows.files().get(rows.file(found.row)).name(),
                        rows.line(found.row),
                        rows.table().title(),
                        found.doubt.what(),
                        found.doubt.assumed()))
                .toList();
    }

    /** Returns everything that is wrong with a row. */
    List<String> reasons(int row) {
        List<String> all = new ArrayList<>(rows.problems(row));
        all.addAll(reasons.getOrDefault(row, List.of()));
        return all;
    }

    /** Lets a corrected row stand in the place of the row it came from. */
    void stand(int row, int place) {
        places.put(row, place);
    }

    /** Returns the place in {@link TableRows#files} of the file in whose order a row stands. */
    int file(int row) {
        return rows.file(places.getOrDefault(row, row));
    }

    /** Notes which older row of the same key a row replaced. */
    void replaces(int row, int olderRow) {
        older.put(row, olderRow);
    }

    /** Returns the rows of the same key that a row replaced, newest first. */
    List<Integer> replaced(int row) {
        List<Integer> chain = new ArrayList<>();
        for (Integer at = older.get(row); at != null; at = older.get(at)) {
            chain.add(at);
        }
        return chain;
    }
}
