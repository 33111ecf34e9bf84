package benchtrue.reconcile;

/**
 * One row that was used although something about it is doubtful.
 *
 * @param file the file it stands in
 * @param line the line on which it begins
 */
public record DoubtfulRow(String file, int line, String table, String doubt, String assumed) {}
