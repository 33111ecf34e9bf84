package benchtrue.revision;

import benchtrue.findings.LeftOut;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Slowing;
import benchtrue.findings.TypeTotals;
import benchtrue.format.Figures;
import benchtrue.hours.JobLines;
import benchtrue.shop.Absent;
import java.util.Arrays;
import java.util.Optional;

/**
 * What the judged jobs of one repair type took, added up.
 *
 * @param repairType its code
 * @param jobs how many
 * @param tickets tickets with at least one of them
 * @param loadFactor (hours + putting right) / quoted hours against the book; NaN without jobs
 * @param actualSeconds their hours, without putting right
 * @param reworkSeconds hours spent putting them right
 * @param since day from which the jobs count, {@link Absent#DAY} where all do
 * @param without jobs whose excess is left out, in words; empty for none
 */
record JobTotals(
        int repairType,
        int jobs,
        int tickets,
        double loadFactor,
        long actualSeconds,
        long reworkSeconds,
        int since,
        String without) {
    /**
     * Takes what a review found; of a repair type that surely got slower, the jobs since.
     *
     * @param load hours per quoted hour that can be relied on, at today's pace
     */
    static JobTotals of(RepairFinding finding, Optional<Slowing> slowing, double load) {
        Optional<Slowing> current = slowing.filter(slow -> Double.isFinite(slow.loadSince()));
        int jobs = current.map(Slowing::jobsSince).orElse(finding.lines());
        return new JobTotals(
                finding.repairType(),
                jobs,
                jobs,
                current.map(Slowing::loadSince).orElse(load),
                finding.actualSeconds(),
                finding.reworkSeconds(),
                current.map(Slowing::startDay).orElse(Absent.DAY),
                "");
    }

    /** Returns the same jobs at another pace. */
    JobTotals atPace(double factor) {
        return new JobTotals(
                repairType, jobs, tickets, loadFactor * factor, actualSeconds, reworkSeconds, since, without);
    }

    /** Returns the same with the excess of some jobs left out. */
    JobTotals without(LeftOut left) {
        return new JobTotals(
                repairType, jobs, tickets, loadFactor * left.load(), actualSeconds, reworkSeconds, since, left.words());
    }

    /** Returns the sums of every repair type, by code. */
    static JobTotals[] of(JobLines jobs) {
        TypeTotals sums = TypeTotals.of(jobs);
        JobTotals[] totals = new JobTotals[sums.lines().length];
        Arrays.setAll(
                totals,
                type -> new JobTotals(
                        type,
                        sums.lines()[type],
                        sums.tickets()[type],
                        sums.load(type),
                        sums.actualSeconds()[type],
                        sums.reworkSeconds()[type],
                        Absent.DAY,
                        ""));
        return totals;
    }

    /** Returns hours with putting right per hour without. */
    double withRework() {
        return actualSeconds > 0 ? 1 + reworkSeconds / (double) actualSeconds : 1;
    }

    /** Returns which jobs these are, in words. */
    String words(Figures figures) {
        String all = figures.count(jobs, "job", "jobs")
                + (without.isEmpty() ? "" : " (the excess of those " + without + " left out)");
        return Absent.has(since) ? all + " since it got slower on " + figures.day(since) : all;
    }
}
