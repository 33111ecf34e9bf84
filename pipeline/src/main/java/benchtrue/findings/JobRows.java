package benchtrue.findings;

import benchtrue.findings.JobFactors.TraitColumn;
import benchtrue.hours.JobLines;
import benchtrue.shop.Hours;
import benchtrue.statistics.Factor;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/**
 * The rows of the model of hours: finished jobs with hours of their own, then open ones at their hours so far.
 *
 * @param line row of each job's line
 * @param finished how many of the jobs, from the first on, are finished
 * @param logRatio ln(hours / quoted hours against today's book)
 * @param traits which traits stand in which families often enough to be told apart
 */
record JobRows(JobFactors factors, int[] line, int finished, double[] logRatio, List<TraitColumn> traits) {
    /** Places of the random effects among the factors. */
    static final int FAMILY = 0;

    static final int TYPE = 1;
    static final int TECHNICIAN = 2;
    static final int CLASS = 3;
    static final int WRITER = 4;

    /** The newest jobs are enough for the effects; of older ones the residuals are reckoned all the same. */
    private static final int MOST_ROWS = 60_000;

    private static final int ENOUGH_WITH_TRAIT = 8;

    /**
     * Returns the rows of a shop. Without a finished job there is nothing that an open one could be held against.
     *
     * @param closed finished jobs whose hours are their own and not copied from the quote
     */
    static JobRows of(JobLines jobs, JobFactors factors, int[] closed, int[] open) {
        int[] newest = closed.length <= MOST_ROWS ? closed : newest(jobs, closed);
        int[] compared = closed.length > 0 ? open : new int[0];
        int[] line =
                IntStream.concat(Arrays.stream(newest), Arrays.stream(compared)).toArray();
        double[] logRatio =
                Arrays.stream(line).mapToDouble(l -> logRatio(jobs, l)).toArray();
        return new JobRows(factors, line, newest.length, logRatio, factors.traitColumns(newest, ENOUGH_WITH_TRAIT));
    }

    static double logRatio(JobLines jobs, int line) {
        return StrictMath.log(Hours.of(jobs.actualSeconds(line)) / jobs.todayQuotedHours(line));
    }

    private static int[] newest(JobLines jobs, int[] closed) {
        int[] opened =
                Arrays.stream(closed).map(l -> jobs.ledger().opened(l)).sorted().toArray();
        int from = opened[opened.length - MOST_ROWS];
        return Arrays.stream(closed)
                .filter(l -> jobs.ledger().opened(l) >= from)
                .toArray();
    }

    /** Returns the random effects in their places. */
    Factor[] randomEffects(JobLines jobs) {
        return new Factor[] {
            factor(factors.families().size(), factors::family),
            factor(jobs.ledger().repairTypes().size(), factors::type),
            factor(jobs.ledger().technicians().size(), factors::technician),
            factor(factors.classes().size(), factors::instrumentClass),
            factor(factors.writers().size(), factors::writer)
        };
    }

    private Factor factor(int levels, IntUnaryOperator code) {
        return new Factor(levels, Arrays.stream(line).map(code).toArray());
    }

    /** Returns the fixed effects' columns: the quote's adjustment, then the traits. */
    double[][] columns() {
        double[][] columns = new double[1 + traits.size()][line.length];
        for (int row = 0; row < line.length; row++) {
            double[] values = values(line[row]);
            for (int column = 0; column < values.length; column++) {
                columns[column][row] = values[column];
            }
        }
        return columns;
    }

    /** Returns a line's values of the fixed effects. */
    double[] values(int row) {
        double[] values = new double[1 + traits.size()];
        values[0] = factors.adjustment(row);
        for (int i = 0; i < traits.size(); i++) {
            TraitColumn column = traits.get(i);
            values[i + 1] = factors.family(row) == column.family() && factors.has(row, column.trait()) ? 1 : 0;
        }
        return values;
    }

    /** Returns a line's levels of the random effects. */
    int[] levels(int row) {
        return new int[] {
            factors.family(row),
            factors.type(row),
            factors.technician(row),
            factors.instrumentClass(row),
            factors.writer(row)
        };
    }
}
