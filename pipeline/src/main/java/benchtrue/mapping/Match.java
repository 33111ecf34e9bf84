package benchtrue.mapping;

import benchtrue.intake.ColumnProfile;
import benchtrue.intake.columns.Column;

/**
 * A column of a file that is taken for a canonical one.
 *
 * @param column canonical
 * @param source the file's
 * @param confidence 0 to 1: a rule of thumb, not a probability
 * @param reason for a person
 */
record Match(Column column, ColumnProfile source, double confidence, String reason) {
    /** Below this a person must decide. */
    private static final double SURE_ENOUGH = 0.5;

    boolean isSure() {
        return confidence >= SURE_ENOUGH;
    }

    int percent() {
        return (int) StrictMath.round(100 * confidence);
    }
}
