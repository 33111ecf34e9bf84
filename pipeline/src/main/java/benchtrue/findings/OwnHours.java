package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.hours.SplitEvidence;
import benchtrue.shop.Hours;
import benchtrue.shop.Ints;

/**
 * Judged lines whose hours are surely their own: logged to the line, or to a ticket with nothing else on it. Split hours are
 * means and scatter too little for spread, quantiles and slowing.
 *
 * @param line rows of the lines, ascending
 * @param logRatio ln(hours / quoted hours against today's book) of each
 */
record OwnHours(int[] line, double[] logRatio) {

    /** Returns the lines of a shop; those without any hours are left out. */
    static OwnHours of(JobLines jobs) {
        Ints rows = new Ints();
        for (int line = 0; line < jobs.size(); line++) {
            boolean own = jobs.judged(line) && jobs.evidence(line) == SplitEvidence.LOGGED;
            if (own && jobs.actualSeconds(line) > 0 && jobs.todayQuotedHours(line) > 0) {
                rows.add(line);
            }
        }
        double[] logRatio = new double[rows.size()];
        for (int i = 0; i < logRatio.length; i++) {
            int line = rows.get(i);
            logRatio[i] = StrictMath.log(Hours.of(jobs.actualSeconds(line)) / jobs.todayQuotedHours(line));
        }
        return new OwnHours(rows.toArray(), logRatio);
    }
}
