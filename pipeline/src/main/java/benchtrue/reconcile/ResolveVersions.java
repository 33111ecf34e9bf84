package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.Column;
import benchtrue.intake.columns.InputFile;
import benchtrue.intake.columns.Kind;
import benchtrue.shop.Ints;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Decides which row counts where exports overlap or correct one another. Rows are taken older exports first; a row that
 * came back corrected stands in the place of the row it came from. Rows with a key: the newest that can be read counts.
 * Rows without one: as many of the same content count as the file with the most of them holds.
 */
final class ResolveVersions {
    private final RowDispositions table;
    private final TableRows rows;
    private final ReturnedRows returned;
    private final Contents all;
    private final Contents key;
    private final RemovedDuplicates twins;
    private final Set<Integer> taken = new HashSet<>();
    private RowGroups keyed;
    private RowGroups unkeyed;
    private Ints counted;
    private Ints countedIn;
    private Ints countedThere;

    private ResolveVersions(RowDispositions table) {
        this.table = table;
        rows = table.rows();
        returned = ReturnedRows.find(table);
        List<Column> columns = rows.table().columns().stream()
                .filter(column -> column.cell().kind() != Kind.PASSED)
                .toList();
        all = new Contents(rows, columns);
        key = new Contents(rows, rows.table().key());
        twins = new RemovedDuplicates(table, returned, all, key);
        forget();
    }

    static void resolve(RowDispositions table) {
        ResolveVersions versions = new ResolveVersions(table);
        for (int file = 0; file < table.rows().files().size(); file++) {
            versions.resolve(file);
        }
    }

    private void forget() {
        keyed = new RowGroups(key);
        unkeyed = new RowGroups(all);
        counted = new Ints();
        countedIn = new Ints();
        countedThere = new Ints();
    }

    private void resolve(int place) {
        InputFile file = rows.files().get(place);
        if (rows.table().versioned()) {
            forget();
        }
        Map<Integer, Integer> gone = twins.in(file);
        gone.keySet().forEach(row -> table.decide(row, RowStatus.SUPERSEDED));
        takeUnkeyedReplacements(gone, place);
        for (int row = file.firstRow(); row < file.firstRow() + file.rows(); row++) {
            if (gone.containsKey(row)) {
                takeReplacement(row, place);
            } else if (!returned.isReturned(row)) {
                take(row, place);
            }
        }
    }

    /** A row that came back stands where the row it came from stood. */
    private void takeReplacement(int row, int place) {
        if (returned.isGone(row) && !returned.isReturned(row)) {
            bury(row);
            int replacement = returned.last(row);
            table.stand(replacement, row);
            if (key.complete(replacement) && !takeKeyed(replacement)) {
                taken.add(replacement);
                takeUnkeyed(replacement, place);
            }
        }
    }

    /**
     * Rows without a key are counted within a file, and so is what came back for them, wherever one of their twins stands:
     * first what counts since an older file, then what is new.
     */
    private void takeUnkeyedReplacements(Map<Integer, Integer> gone, int place) {
        List<Integer> fresh = new ArrayList<>();
        gone.forEach((row, meant) -> {
            int replacement = returned.last(meant);
            if (taken.contains(replacement) && !returned.isReturned(row)) {
                count(replacement, place);
            } else if (!key.complete(replacement) && !returned.isReturned(row)) {
                fresh.add(replacement);
            }
        });
        taken.addAll(fresh);
        fresh.forEach(row -> takeUnkeyed(row, place));
    }

    /** A row for which another came back counts no more, but still stands above older ones of its own key. */
    private void bury(int row) {
        if (key.complete(row)) {
            takeKeyed(row);
        }
        table.decide(row, RowStatus.SUPERSEDED);
    }

    /** A ticket's columns stand on each of its lines: the first row counts, and what a later one says otherwise is told. */
    private void repeatOnLine(int row, int rival) {
        table.decide(row, RowStatus.REPEATED);
        boolean otherwise = rows.table().columns().stream()
                .anyMatch(column -> rows.code(column, row) != 0
                        && rows.has(column)
                        && !rows.text(column, row).equals(rows.text(column, rival)));
        if (otherwise) {
            table.doubt(Doubt.TICKET_AGAINST_ITSELF, row, () -> "the first row is " + rows.place(rival));
        }
    }

    private void take(int row, int file) {
        if (!key.complete(row) || !takeKeyed(row)) {
            takeUnkeyed(row, file);
        }
    }

    /** Returns false for a row that can't be read while an older one of its key can. */
    private boolean takeKeyed(int row) {
        int before = keyed.size();
        int group = keyed.group(row);
        int rival = keyed.member(group);
        if (keyed.size() > before) {
            return true;
        }
        boolean buried = returned.isGone(rival);
        if (all.equal(rival, row) && !(buried && returned.isReturned(row))) {
            table.decide(row, buried ? RowStatus.SUPERSEDED : RowStatus.REPEATED);
            return true;
        }
        if (table.file(rival) == table.file(row)
                && rows.files().get(table.file(row)).keys() == InputFile.Keys.ON_EACH_LINE) {
            repeatOnLine(row, rival);
            return true;
        }
        if (rows.readable(rival) && !rows.readable(row)) {
            return false;
        }
        table.decide(rival, RowStatus.SUPERSEDED);
        table.replaces(row, rival);
        keyed.stand(group, row);
        if (!buried && !returned.isGone(row) && rows.readable(rival)) {
            boolean oneFile = table.file(rival) == table.file(row);
            table.doubt(
                    oneFile ? Doubt.KEY_TWICE_IN_FILE : Doubt.KEY_CHANGED, row, () -> "replaces " + rows.place(rival));
        }
        return true;
    }

    private void takeUnkeyed(int row, int file) {
        int group = count(row, file);
        if (countedThere.get(group) > counted.get(group)) {
            counted.set(group, countedThere.get(group));
        } else {
            table.decide(row, RowStatus.REPEATED);
        }
    }

    /** Counts a row among those of a file that say the same. */
    private int count(int row, int file) {
        int group = unkeyed.group(row);
        if (group == counted.size()) {
            counted.add(0);
            countedIn.add(file);
            countedThere.add(0);
        }
        if (countedIn.get(group) != file) {
            countedIn.set(group, file);
            countedThere.set(group, 0);
        }
        countedThere.set(group, countedThere.get(group) + 1);
        return group;
    }
}
