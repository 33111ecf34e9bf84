package benchtrue.breakdown;

import benchtrue.findings.FindVerdicts;
import benchtrue.findings.Verdict;
import benchtrue.shop.Absent;
import benchtrue.statistics.Interval;
import benchtrue.statistics.Jackknife;

/** The range of a load, where the jobs allow one. */
final class LoadRange {
    private static final double LEVEL = 0.90;

    /** Where more of the jobs are of repairs that miss hours, no range is given. */
    private static final double MOST_NOT_JUDGED = 0.2;

    private static final Figure TOO_FEW = instead("too few to tell");
    private static final Figure HOURS_MISSING = instead("not judged: hours missing");

    private LoadRange() {}

    private static Figure instead(String words) {
        return new Figure(Figure.Form.RANGE, Absent.AMOUNT, Double.NaN, Double.NaN, words);
    }

    /** Returns how many of some jobs are of repairs of which too many hours could not be read. */
    static int notJudged(JobColumns columns, JobSums jobs) {
        boolean[] notJudged = columns.are("verdict", Verdict.NOT_JUDGED.words());
        return (int) jobs.rows().filter(row -> notJudged[row]).count();
    }

    /**
     * Returns the range over jobs that count. Hours dealt from a whole ticket scatter too little, so it is as wide as the
     * visits with hours of their own make it, and never narrower than all visits do.
     */
    static Figure of(JobColumns columns, JobSums counted) {
        if (notJudged(columns, counted) > MOST_NOT_JUDGED * counted.size()) {
            return HOURS_MISSING;
        }
        boolean[] owns = columns.are("own_hours", "yes");
        Jackknife all = Load.of(columns, counted).jackknife();
        Jackknife own = Load.of(columns, counted.where(row -> owns[row])).jackknife();
        if (own.groups() < FindVerdicts.ENOUGH_TICKETS || !(own.standardError() > 0)) {
            return TOO_FEW;
        }
        double error = StrictMath.max(own.standardError(), all.standardError());
        Interval range = new Jackknife(own.groups(), all.estimate(), all.mean(), error, 0).interval(LEVEL);
        return new Figure(
                Figure.Form.RANGE, Absent.AMOUNT, StrictMath.exp(range.low()), StrictMath.exp(range.high()), "");
    }
}
