package benchtrue.reconcile;

import benchtrue.intake.TableRows;
import benchtrue.intake.TextColumn;
import benchtrue.intake.columns.Column;
import java.util.List;

/** Tells whether rows of a table say the same in some columns: {@code 7.5} and {@code 7.50} do. */
final class Contents {
    private final TableRows rows;
    private final TextColumn[] columns;
    private final int[][] same;

    Contents(TableRows rows, List<Column> columns) {
        this.rows = rows;
        this.columns = columns.stream().filter(rows::has).map(rows::column).toArray(TextColumn[]::new);
        same = new int[this.columns.length][];
        for (int i = 0; i < same.length; i++) {
            same[i] = this.columns[i].sameAs();
        }
    }

    int hash(int row) {
        int hash = Long.hashCode(rows.raggedDigest(row));
        for (int i = 0; i < columns.length; i++) {
            hash = hash * 0x9E3779B1 + same[i][columns[i].code(row)];
        }
        hash ^= hash >>> 16;
        return hash * 0x85EBCA6B ^ hash >>> 13;
    }

    boolean equal(int left, int right) {
        for (int i = 0; i < columns.length; i++) {
            if (same[i][columns[i].code(left)] != same[i][columns[i].code(right)]) {
                return false;
            }
        }
        return rows.raggedDigest(left) == rows.raggedDigest(right);
    }

    /** Returns how many different contents there can be where one column decides, else 0. */
    int distinct() {
        return columns.length == 1 ? columns[0].distinct() : 0;
    }

    /** Returns the number of a row's content where one column decides. */
    int number(int row) {
        return same[0][columns[0].code(row)];
    }

    /** Returns whether every column of a row is there and can be read. */
    boolean complete(int row) {
        for (TextColumn column : columns) {
            if (!column.usable(column.code(row))) {
                return false;
            }
        }
        return columns.length > 0;
    }
}
