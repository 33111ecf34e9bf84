package benchtrue.findings;

import benchtrue.costing.CostedLines;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;
import benchtrue.shop.RepairType;
import benchtrue.statistics.BenjaminiHochberg;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds which repair types are under- or over-quoted, from the shop's own records. */
public final class FindVerdicts {
    /** Tickets with a repair type below which nothing is said about it. */
    static final int ENOUGH_TICKETS = 5;

    /** Returns one finding for each repair type of today's or an earlier price book. */
    public Findings find(CostedLines costs, Settings settings) {
        JobLines jobs = costs.jobs();
        TypeTotals totals = TypeTotals.of(jobs);
        WeighLoads loads = new WeighLoads(jobs, settings);
        LoadEvidence[] evidence = loads.weigh(enough(totals));
        double[] adjustedP = adjust(evidence);
        OwnHours own = OwnHours.of(jobs);
        double[] typical = new TypicalFactors(jobs.ledger(), own).byType();
        List<CopiedQuotes> copied = new SpotCopiedQuotes(jobs, own).byType(loads);
        Judge judge = new Judge(costs, settings, totals, copied);
        List<RepairFinding> repairs = new ArrayList<>();
        for (int type = 0; type < evidence.length; type++) {
            if (inSomeBook(jobs.ledger(), type).isPresent()) {
                repairs.add(
                        judge.judge(type, evidence[type], typical[type], adjustedP[2 * type], adjustedP[2 * type + 1]));
            }
        }
        return new Findings(repairs, FindFoundWork.of(costs), SumUnquotedWork.of(costs), copied);
    }

    private static Optional<RepairType> inSomeBook(Ledger ledger, int type) {
        return ledger.books().type(ledger.repairTypes().name(type), ledger.asOf());
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
