package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.columns.InputFile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Rows in other, overlapping exports that say the same as a row for which a corrected one came back: they are as
 * superseded as that row, one in a file for each row that something came back for.
 */
final class RemovedDuplicates {
    private final TableRows rows;
    private final Contents key;
    private final ReturnedRows returned;
    private final RowGroups groups;
    private final List<List<Integer>> gone = new ArrayList<>();

    RemovedDuplicates(RowDispositions table, ReturnedRows returned, Contents contents, Contents key) {
        rows = table.rows();
        this.returned = returned;
        this.key = key;
        groups = new RowGroups(contents);
        for (int row : returned.gone()) {
            int group = groups.group(row);
            if (group == gone.size()) {
                gone.add(new ArrayList<>());
            }
            gone.get(group).add(row);
        }
    }

    /** Returns the rows of a file that something came back for, and their twins, each with the row that is meant. */
    Map<Integer, Integer> in(InputFile file) {
        Map<Integer, Integer> meant = new LinkedHashMap<>();
        if (gone.isEmpty()) {
            return meant;
        }
        Map<Integer, List<Integer>> others = new HashMap<>();
        for (int row = file.firstRow(); row < file.firstRow() + file.rows(); row++) {
            int group = groups.find(row);
            if (group >= 0 && returned.isGone(row)) {
                meant.put(row, row);
                others(others, group).remove((Integer) row);
            } else if (group >= 0 && canBeTwin(row)) {
                others(others, group);
            }
        }
        for (int row = file.firstRow(); row < file.firstRow() + file.rows(); row++) {
            List<Integer> left = others.getOrDefault(groups.find(row), List.of());
            if (!left.isEmpty() && canBeTwin(row)) {
                meant.put(row, left.remove(0));
            }
        }
        return meant;
    }

    /** A row that its key tells apart needs no counting. */
    private boolean canBeTwin(int row) {
        boolean counted = !key.complete(row) || !rows.readable(row);
        return counted && !returned.isGone(row) && !returned.isReturned(row);
    }

    private List<Integer> others(Map<Integer, List<Integer>> others, int group) {
        return others.computeIfAbsent(group, first -> new ArrayList<>(gone.get(group)));
    }
}
