package benchtrue.reconcile;

import benchtrue.intake.Column;
import benchtrue.intake.TableRows;
import java.util.List;

/** Tells whether rows of a table say the same in some columns: {@code 7.5} and {@code 7.50} do. */
final class Contents {
    private final TableRows rows;
    private final Column[] columns;
    private final int[][] same;

    Contents(TableRows rows, List<Column> columns) {
        this.rows = rows;
        this.columns = columns.stream().filter(rows::has).toArray(Column[]::new);
        same = new int[this.columns.length][];
        for (int i = 0; i < same.length; i++) {
            same[i] = rows.sameAs(this.columns[i]);
        }
    }

    int hash(int row) {
        int hash = 1;
        for (int i = 0; i < columns.length; i++) {
            hash = hash * 0x9E3779B1 + same[i][rows.code(columns[i], row)];
        }
        hash ^= hash >>> 16;
        return hash * 0x85EBCA6B ^ hash >>> 13;
    }

    boolean equal(int left, int right) {
        for (int i = 0; i < columns.length; i++) {
            if (same[i][rows.code(columns[i], left)] != same[i][rows.code(columns[i], right)]) {
                return false;
            }
        }
        return true;
    }

    /** Returns whether every column of a row is there and can be read. */
    boolean complete(int row) {
        for (Column column : columns) {
            if (!rows.usable(column, rows.code(column, row))) {
                return false;
            }
        }
        return columns.length > 0;
    }
}
