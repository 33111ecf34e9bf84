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
 * @param pattern the pattern whose group is what its cells say, empty where they say it whole
 */
record Match(Column column, ColumnProfile source, double confidence, String reason, String pattern) {
    /** Below this a person must decide. */
    private static final double SURE_ENOUGH = 0.5;

    Match(Column column, ColumnProfile source, double confidence, String reason) {
        this(column, source, confidence, reason, "");
    }

    boolean isSure() {
        return confidence >= SURE_ENOUGH;
    }

    int percent() {
        return (int) StrictMath.round(100 * confidence);
    }
}
