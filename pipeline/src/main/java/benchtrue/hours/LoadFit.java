package benchtrue.hours;

/**
 * A fitted split.
 *
 * @param factor hours per base hour of each cell, leaning on the family
 * @param hours hours of each cell after the split
 * @param base base hours of each cell
 */
record LoadFit(double[] factor, double[] hours, double[] base) {}
