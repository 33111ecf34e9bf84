package benchtrue.hours;

import java.util.Arrays;

/**
 * How much hours scatter around expectation, by cell as a share of it, from lines whose hours are known outright; each cell
 * leans on its family, each family on the shop. Also the labelling habit: how much of what a line with named hours still
 * lacks is to be looked for in the ticket's other time.
 *
 * @param byCell coefficient of variation of each cell
 * @param named from near 0 (a line is named with all its hours or not at all) to 1 (naming says nothing about the rest)
 */
record Spreads(double[] byCell, double named) {
    static final double GUESS = 0.3;
    static final double NAMED_GUESS = 0.3;

    static Spreads guess(int cells) {
        double[] byCell = new double[cells];
        Arrays.fill(byCell, GUESS);
        return new Spreads(byCell, NAMED_GUESS);
    }

    double of(int cell) {
        return byCell[cell];
    }
}
