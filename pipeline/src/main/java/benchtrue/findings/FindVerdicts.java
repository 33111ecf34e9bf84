package benchtrue.findings;

import benchtrue.costing.CostedLines;
import benchtrue.hours.JobLines;
import benchtrue.hours.UnquotedWork;
import benchtrue.settings.Settings;
import benchtrue.shop.Hours;
import benchtrue.statistics.BenjaminiHochberg;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ForkJoinTask;

/** Finds which repair types are under- or over-quoted, from the shop's own records. */
public final class FindVerdicts {
    /** Tickets with a repair type below which nothing is said about it. */
    public static final int ENOUGH_TICKETS = 5;

    /** Returns one finding for each repair type of today's or an earlier price book, and what stands beside them. */
    public Findings find(CostedLines costs, Settings settings) {
        JobLines jobs = costs.jobs();
        SpotCopiedQuotes copies = new SpotCopiedQuotes(jobs, OwnHours.of(jobs));
        SurelyOwnJobs surelyOwn = copies.surelyOwn();
        ShopPace pace = ShopPace.of(jobs, surelyOwn.rows());
        EntryGrid grid = copies.grid();
        RoundingForm[] forms = RoundingForm.TellByPaidHours.of(jobs.ledger(), grid);
        LoadReach reach =
                RoundedHours.of(jobs, grid, forms).orMoved(pace.perhaps(jobs)).withPutBack(MisplacedTime.of(jobs));
        ShopPace.Corrections today = pace.corrections(jobs).times(reach.middle());
        // These three ask nothing of each other, and take about as long.
        ForkJoinTask<StudyJobs> studying = ForkJoinTask.adapt(() -> new StudyJobs(jobs, surelyOwn.rows(), pace))
                .fork();
        TypeTotals totals = TypeTotals.of(jobs);
        UnreadShares unread = UnreadShares.of(jobs.ledger(), settings, totals, reach);
        WeighLoads loads = new WeighLoads(jobs, settings, unread);
        ForkJoinTask<List<CopiedQuotes>> copying =
                ForkJoinTask.adapt(() -> copies.byType(loads)).fork();
        LoadEvidence[] evidence = loads.weigh(enough(totals), today);
        List<CopiedQuotes> copied = copying.join();
        copies.leaveOut(copied, loads, evidence, today);
        StudyJobs study = studying.join();
        ForkJoinTask<List<UsualJob>> asking =
                ForkJoinTask.adapt(study::usualJobs).fork();
        Causes causes = study.causes(totals, settings);
        Drift drift = study.drift(causes, new CurrentLoads(jobs, loads, surelyOwn.copiedTickets()), evidence);
        List<UsualJob> usual = asking.join();
        DescribeCauses describe = new DescribeCauses(costs, settings, causes, drift.slowings());
        VerdictRule judge = new VerdictRule(costs, settings, totals, copied, drift.slowings(), unread, today, describe);
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
                study.downWeighted(),
                FindQuoteSizes.of(jobs, surelyOwn.rows(), pace),
                pace,
                copies.copiedLines(),
                surelyOwn,
                repairs.stream().flatMap(row -> describe.all(row).stream()).toList(),
                study.writers(costs, settings),
                describe.leftOut(),
                reach,
                RoundingForm.Logged.of(jobs.ledger().time(), grid, forms),
                new FindRestorations(
                                jobs,
                                study.factors(),
                                settings,
                                unread,
                                today.factor(),
                                totals.loads(),
                                copies.copiedLines())
                        .find(causes.all()));
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

    /** Sums the hours that went into repair types their tickets never quoted. */
    static final class SumUnquotedWork {
        private SumUnquotedWork() {}

        /** Returns one total a repair type, the most money first. */
        static List<UnquotedTotal> of(CostedLines costs) {
            LastYear year = LastYear.of(costs.jobs());
            TreeMap<Integer, List<UnquotedWork>> byType = new TreeMap<>();
            for (UnquotedWork work : costs.jobs().unquoted()) {
                byType.computeIfAbsent(work.repairType(), t -> new ArrayList<>())
                        .add(work);
            }
            List<UnquotedTotal> totals = new ArrayList<>();
            byType.forEach((type, works) -> totals.add(total(type, works, year, costs.shopRate())));
            totals.sort(Comparator.comparingLong(UnquotedTotal::annualMoney)
                    .reversed()
                    .thenComparing(UnquotedTotal::repairType));
            return totals;
        }

        private static UnquotedTotal total(int type, List<UnquotedWork> works, LastYear year, long shopRate) {
            TreeSet<Integer> tickets = new TreeSet<>();
            long seconds = 0;
            long lastYear = 0;
            for (UnquotedWork work : works) {
                tickets.add(work.ticket());
                seconds += work.seconds();
                lastYear += year.holds(work.ticket()) ? work.seconds() : 0;
            }
            double annualHours = Hours.of(lastYear) * year.scale();
            return new UnquotedTotal(
                    type, tickets.size(), seconds, annualHours, (long) StrictMath.rint(annualHours * shopRate));
        }
    }
}
