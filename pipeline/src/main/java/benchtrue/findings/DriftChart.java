package benchtrue.findings;

import benchtrue.statistics.Ewma;

/**
 * The jobs of one repair type in the order they were opened, each against what such a job took before it: scores of mean 0
 * and spread 1 while nothing changes. Place 0 is the oldest job.
 */
public final class DriftChart {
    private final int repairType;
    private final int[] lines;
    private final double[] residuals;
    private final double[] scores;
    private final Ewma ewma;

    /**
     * Takes columns by place, handed over, not shared.
     *
     * @param repairType code of the repair type
     * @param lines rows of its jobs
     * @param residuals ln(hours) above what the job's repair, people, instrument and quote foretold
     * @param scores residuals against the jobs before them; NaN while those are too few
     * @param ewma the chart of the scores
     */
    DriftChart(int repairType, int[] lines, double[] residuals, double[] scores, Ewma ewma) {
        this.repairType = repairType;
        this.lines = lines;
        this.residuals = residuals;
        this.scores = scores;
        this.ewma = ewma;
    }

    /** Returns the code of the repair type. */
    public int repairType() {
        return repairType;
    }

    /** Returns how many jobs there are. */
    public int size() {
        return lines.length;
    }

    /** Returns the row of the job at a place. */
    public int line(int place) {
        return lines[place];
    }

    /** Returns the job's ln(hours) above what was foretold. */
    public double residual(int place) {
        return residuals[place];
    }

    /** Returns the job's score against the jobs before it, NaN while those are too few. */
    public double score(int place) {
        return scores[place];
    }

    /** Returns the moving average of the scores up to a place. */
    public double level(int place) {
        return ewma.level(place);
    }

    /** Returns the level above which the moving average signals slower work. */
    public double limit(int place) {
        return ewma.limits(place).high();
    }
}
