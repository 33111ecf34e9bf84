package benchtrue.statistics;

/**
 * A grouping of rows, such as the technician of each line.
 *
 * @param levels number of levels; a level without a row is allowed
 * @param level of each row, 0 to levels &minus; 1, or -1 where the row has none (it then counts as an average one)
 */
public record Factor(int levels, int[] level) {
    /** Refuses a level outside its range. The array is not copied: leave it alone afterwards. */
    public Factor {
        for (int row = 0; row < level.length; row++) {
            if (level[row] < -1 || level[row] >= levels) {
                throw new IllegalArgumentException("row " + row + " has level " + level[row] + " of " + levels);
            }
        }
    }
}
