package benchtrue.findings;

import benchtrue.costing.CostedLines;
import benchtrue.hours.JobLines;
import benchtrue.settings.Settings;
import benchtrue.statistics.BenjaminiHochberg;
import java.util.List;
import java.util.concurrent.ForkJoinTask;

/** Finds which repair types are under- or over-quoted, from the shop's own records. */
public final class FindVerdicts {
    /** Tickets with a repair type below which nothing is said about it. */
    static final int ENOUGH_TICKETS = 5;

    /** Returns one finding for each repair type of today's or an earlier price book, and what stands beside them. */
    public Findings find(CostedLines costs, Settings settings) {
        JobLines jobs = costs.jobs();
        SpotCopiedQuotes copies = new SpotCopiedQuotes(jobs, OwnHours.of(jobs));
        // These three ask nothing of each other, and take about as long.
        ForkJoinTask<StudyJobs> studying =
                ForkJoinTask.adapt(() -> new StudyJobs(jobs, copies.honest())).fork();
        WeighLoads loads = new WeighLoads(jobs, settings);
        ForkJoinTask<List<CopiedQuotes>> copying =
                ForkJoinTask.adapt(() -> copies.byType(loads)).fork();
        TypeTotals totals = TypeTotals.of(jobs);
        LoadEvidence[] evidence = loads.weigh(enough(totals));
        StudyJobs study = studying.join();
        ForkJoinTask<List<UsualJob>> asking =
                ForkJoinTask.adapt(study::usualJobs).fork();
        Drift drift = study.drift(new CurrentLoads(jobs, loads), evidence);
        List<CopiedQuotes> copied = copying.join();
        List<UsualJob> usual = asking.join();
        Judge judge = new Judge(costs, settings, totals, copied, drift.slowings());
        List<RepairFinding> repairs = judge.all(evidence, adjust(evidence), usual);
        return new Findings(
                repairs,
                FindFoundWork.of(costs),
                SumUnquotedWork.of(costs),
                copied,
                usual,
                study.benchCurves(usual),
                drift,
                study.drivers(),
                study.shortfalls(drift, repairs, totals, costs.shopRate()),
                study.people(settings),
                study.downWeighted());
    }

    private static boolean[] enough(TypeTotals totals) {
        boolean[] enough = new boolean[totals.tickets().length];
        for (int type = 0; type < enough.length; type++) {
            enough[type] = totals.tickets()[type] >= ENOUGH_TICKETS;
        }
        return enough;
    }

    /** One correction over both directions of all repair types: p for under at 2 x code, for over at 2 x code + 1. */
    private static double[] adjust(LoadEvidence[] evidence) {
        double[] p = new double[2 * evidence.length];
        for (int type = 0; type < evidence.length; type++) {
            p[2 * type] = evidence[type].underP();
            p[2 * type + 1] = evidence[type].overP();
        }
        return BenjaminiHochberg.adjust(p);
    }
}
