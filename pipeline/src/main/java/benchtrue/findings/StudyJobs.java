package benchtrue.findings;

import benchtrue.hours.JobLines;
import benchtrue.settings.Settings;
import java.util.List;

/** Fits the model of hours once and asks it what stands beside the verdicts. */
final class StudyJobs {
    private final JobLines jobs;
    private final int[] finished;
    private final OpenJobs open;
    private final JobModel model;

    /**
     * Fits the model.
     *
     * @param finished rows of finished jobs whose hours are their own and not copied from the quote
     */
    StudyJobs(JobLines jobs, int[] finished) {
        this.jobs = jobs;
        this.finished = finished;
        open = OpenJobs.of(jobs);
        model = JobModel.of(jobs, JobRows.of(jobs, new JobFactors(jobs), finished, open.used()));
    }

    List<UsualJob> usualJobs() {
        return UsualJobs.of(jobs, model, open);
    }

    /** Returns how jobs of repair types with open ones leave the bench. */
    List<BenchCurve> benchCurves(List<UsualJob> usual) {
        return DrawBenchCurves.of(jobs, finished, open.used(), usual);
    }

    /** Returns what got slower; the evidence on each repair type that surely did is replaced by that of its newest jobs. */
    Drift drift(CurrentLoads current, LoadEvidence[] evidence) {
        Drift drift = new WatchDrift(jobs, model, finished).watch();
        return new Drift(drift.charts(), current.replace(drift.slowings(), evidence), drift.falseAlarmsAYear());
    }

    List<Driver> drivers() {
        return FindDrivers.of(jobs, model);
    }

    List<ShortfallParts> shortfalls(Drift drift, List<RepairFinding> repairs, TypeTotals totals, long shopRate) {
        return new SplitShortfall(jobs, model.rows().factors(), drift.slowings()).of(repairs, totals, shopRate);
    }

    List<PersonFactor> people(Settings settings) {
        return FindPeople.of(jobs, model, settings);
    }

    int downWeighted() {
        return model.downWeighted();
    }
}
