package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.hours.SplitEvidence;
import benchtrue.shop.Hours;
import benchtrue.shop.Ints;
import benchtrue.shop.LineState;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The jobs in which causes are looked for: those with hours of their own, then those logged with their ticket as a whole.
 *
 * <p>Of a ticket as a whole only its total is known. If all that it took beyond what was to be expected is laid to one line, that
 * line's ln(hours) is told with a variance that grows by what its fellows scatter; so it weighs m&sup2; / &Sigma; m&sup2; of a job
 * with hours of its own, where m is what each line was expected to take.
 *
 * @param line rows of the lines
 * @param own how many of them, from the first on, have hours of their own
 * @param type their repair types
 * @param value ln(hours over what is expected of them), at today's pace
 * @param weight against a job with hours of its own
 * @param familyOfType by repair type
 * @param families how many
 */
record CauseRows(int[] line, int own, int[] type, double[] value, double[] weight, int[] familyOfType, int families) {
    /** Weight below which a ticket says too little of a line. */
    private static final double LEAST_WEIGHT = 0.1;

    /** A line of a ticket that went much faster than expected still took this share of what was expected of it. */
    private static final double LEAST_PART = 0.2;

    /**
     * Takes a shop's jobs.
     *
     * @param causes that are known already and taken off
     */
    static CauseRows of(JobLines jobs, JobModel model, ShopPace pace, Causes causes) {
        JobFactors factors = model.rows().factors();
        Ints line = new Ints();
        double[] part = new double[jobs.size()];
        double[] weigh = new double[jobs.size()];
        Arrays.stream(model.rows().line()).limit(model.rows().finished()).forEach(line::add);
        int own = line.size();
        int[] starts = jobs.ledger().lines().starts(jobs.ledger().tickets().size());
        double[] expected = causes.split().expected();
        for (int ticket = 0; ticket + 1 < starts.length; ticket++) {
            whole(jobs, expected, starts[ticket], starts[ticket + 1], part, weigh);
        }
        for (int row = 0; row < jobs.size(); row++) {
            if (jobs.judged(row) && weigh[row] >= LEAST_WEIGHT && jobs.todayQuotedHours(row) > 0) {
                line.add(row);
            }
        }
        int[] lines = line.toArray();
        double[] value = new double[lines.length];
        double[] weight = new double[lines.length];
        for (int i = 0; i < lines.length; i++) {
            int opened = jobs.ledger().tickets().opened(jobs.ledger().lines().ticket(lines[i]));
            int type = factors.type(lines[i]);
            double off = i < own
                    ? model.rows().logRatio()[i] - model.expected(lines[i]) - causes.sizes(type, lines[i])
                    : StrictMath.log(part[lines[i]]);
            value[i] = off + (pace.sure() ? StrictMath.log(pace.toToday(opened)) : 0);
            weight[i] = i < own ? 1 : weigh[lines[i]];
        }
        int types = jobs.ledger().repairTypes().size();
        return new CauseRows(
                lines,
                own,
                IntStream.of(lines).map(factors::type).toArray(),
                value,
                weight,
                IntStream.range(0, types).map(factors::familyOfType).toArray(),
                factors.families().size());
    }

    private static void whole(JobLines jobs, double[] expected, int from, int to, double[] part, double[] weigh) {
        double taken = 0;
        double sum = 0;
        double squares = 0;
        for (int line = from; line < to; line++) {
            if (split(jobs, line)) {
                taken += Hours.of(jobs.actualSeconds(line));
                sum += expected[line];
                squares += expected[line] * expected[line];
            }
        }
        for (int line = from; line < to; line++) {
            if (split(jobs, line) && expected[line] > 0) {
                part[line] = StrictMath.max(LEAST_PART, 1 + (taken - sum) / expected[line]);
                weigh[line] = expected[line] * expected[line] / squares;
            }
        }
    }

    /** Returns whether some of a line's hours were dealt to it out of its ticket's. */
    static boolean split(JobLines jobs, int line) {
        return jobs.state(line) == LineState.CLOSED
                && (jobs.evidence(line) == SplitEvidence.SPLIT || jobs.evidence(line) == SplitEvidence.PARTLY_SPLIT);
    }
}
