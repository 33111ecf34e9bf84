package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.shop.Ints;

/**
 * Rows in other, overlapping exports that say the same as a row for which a corrected one came back: they are as
 * superseded as that row, as many in a file as came back.
 */
final class GoneTwins {
    private final TableRows rows;
    private final ReturnedRows returned;
    private final RowGroups groups;
    private final Ints mostInOneFile = new Ints();
    private final Ints left = new Ints();

    GoneTwins(Sifting table, ReturnedRows returned, Contents contents) {
        rows = table.rows();
        this.returned = returned;
        groups = new RowGroups(contents);
        for (int file = 0; file < rows.files().size() && !returned.isEmpty(); file++) {
            count(file);
        }
    }

    private void count(int file) {
        Ints here = new Ints();
        for (int row : returned.gone()) {
            if (rows.file(row) == file) {
                int group = group(row);
                while (here.size() <= group) {
                    here.add(0);
                }
                here.set(group, here.get(group) + 1);
                mostInOneFile.set(group, Math.max(mostInOneFile.get(group), here.get(group)));
            }
        }
    }

    private int group(int row) {
        int group = groups.group(row);
        if (group == mostInOneFile.size()) {
            mostInOneFile.add(0);
            left.add(0);
        }
        return group;
    }

    /** Begins a file. */
    void begin(int file) {
        for (int group = 0; group < left.size(); group++) {
            left.set(group, mostInOneFile.get(group));
        }
        for (int row : returned.gone()) {
            if (rows.file(row) == file) {
                left.set(groups.group(row), left.get(groups.group(row)) - 1);
            }
        }
    }

    /** Returns whether a row goes with one of the rows that something came back for. */
    boolean takes(int row) {
        if (returned.isEmpty()) {
            return false;
        }
        int group = groups.find(row);
        if (group < 0 || left.get(group) == 0) {
            return false;
        }
        left.set(group, left.get(group) - 1);
        return true;
    }
}
