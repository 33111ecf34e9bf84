package benchtrue.findings;

import benchtrue.costing.CostedLines;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.RepairType;
import benchtrue.statistics.BenjaminiHochberg;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Finds which repair types are under- or over-quoted, from the shop's own records. */
public final class FindVerdicts {
    /** Tickets with a repair type below which nothing is said about it. */
    static final int ENOUGH_TICKETS = 5;

    /** Returns one finding for each repair type of today's or an earlier price book. */
    public Findings find(CostedLines costs, Settings settings) {
        JobLines jobs = costs.jobs();
        TypeTotals totals = TypeTotals.of(jobs);
        LoadEvidence[] evidence = new WeighLoads(jobs.model(), settings).weigh(ticketTypes(jobs), enough(totals));
        double[] adjustedP = adjust(evidence);
        double[] typical = new TypicalFactors(jobs.ledger(), OwnHours.of(jobs)).byType();
        List<RepairFinding> repairs = new ArrayList<>();
        for (int type = 0; type < evidence.length; type++) {
            if (inSomeBook(jobs.ledger(), type).isPresent()) {
                repairs.add(new Judge(costs, settings, totals)
                        .judge(type, evidence[type], typical[type], adjustedP[2 * type], adjustedP[2 * type + 1]));
            }
        }
        return new Findings(repairs);
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

    private static int[][] ticketTypes(JobLines jobs) {
        QuotedLines lines = jobs.ledger().lines();
        int[][] types = new int[jobs.ledger().tickets().size()][];
        int[] starts = lines.starts(types.length);
        for (int ticket = 0; ticket < types.length; ticket++) {
            TreeSet<Integer> held = new TreeSet<>();
            for (int line = starts[ticket]; line < starts[ticket + 1]; line++) {
                if (jobs.judged(line)) {
                    held.add(lines.repairType(line));
                }
            }
            types[ticket] = held.stream().mapToInt(Integer::intValue).toArray();
        }
        return types;
    }
}
