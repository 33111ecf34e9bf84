package benchtrue.reconcile;

/**
 * One row that was used although something about it is doubtful.
 *
 * @param file the file it stands in
 * @param line the line on which it begins
 * @param table what it is a row of
 * @param doubt what is doubtful
 * @param assumed what was assumed
 */
public record DoubtfulRow(String file, int line, String table, String doubt, String assumed) {}
