package benchtrue.findings;

import benchtrue.costing.CostedLines;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Turns the evidence on one repair type into a verdict and money a year. */
final class VerdictRule {
    private final CostedLines costs;
    private final Settings settings;
    private final TypeTotals totals;
    private final Map<Integer, CopiedQuotes> copied;
    private final Map<Integer, Slowing> slowings;
    private final UnreadShares unread;
    private final ShopPace.Corrections today;
    private final DescribeCauses causes;

    VerdictRule(
            CostedLines costs,
            Settings settings,
            TypeTotals totals,
            List<CopiedQuotes> copied,
            List<Slowing> slowings,
            UnreadShares unread,
            ShopPace.Corrections today,
            DescribeCauses causes) {
        this.causes = causes;
        this.today = today;
        this.costs = costs;
        this.settings = settings;
        this.totals = totals;
        this.unread = unread;
        this.copied = copied.stream()
                .filter(CopiedQuotes::many)
                .collect(Collectors.toMap(CopiedQuotes::repairType, row -> row));
        this.slowings = slowings.stream().collect(Collectors.toMap(Slowing::repairType, slowing -> slowing));
    }

    /**
     * Returns the findings of all repair types in some book, by code.
     *
     * @param adjustedP p for under at 2 x code, for over at 2 x code + 1
     */
    List<RepairFinding> all(LoadEvidence[] evidence, double[] adjustedP, List<UsualJob> usual) {
        Ledger ledger = costs.jobs().ledger();
        List<RepairFinding> repairs = new ArrayList<>();
        for (int type = 0; type < evidence.length; type++) {
            if (ledger.books()
                    .type(ledger.repairTypes().name(type), ledger.asOf())
                    .isPresent()) {
                repairs.add(judge(
                        type, evidence[type], usual.get(type).typical(), adjustedP[2 * type], adjustedP[2 * type + 1]));
            }
        }
        return repairs;
    }

    private RepairFinding judge(int type, LoadEvidence evidence, double typical, double underP, double overP) {
        Slowing slowing = slowings.get(type);
        boolean since = slowing != null && !Double.isNaN(slowing.loadSince());
        double load =
                since ? slowing.loadSince() * unread.reach().middle()[type] : measured(type) * today.factor()[type];
        long shortfall = money(type, load);
        boolean held = totals.lines()[type] > 0 && unread.holds(type);
        boolean known = evidence.known();
        RepairFinding unworded = new RepairFinding(
                type,
                totals.lines()[type],
                totals.quotedHours()[type],
                totals.actualSeconds()[type],
                totals.reworkSeconds()[type],
                totals.load(type),
                typical,
                evidence.range().low(),
                evidence.range().high(),
                evidence.chanceOver(),
                StrictMath.min(underP, overP),
                held ? Absent.AMOUNT : shortfall,
                known && !held ? money(type, evidence.current().low()) : Absent.AMOUNT,
                known && !held ? money(type, evidence.current().high()) : Absent.AMOUNT,
                held ? Verdict.NOT_JUDGED : verdict(known, load, underP, overP, shortfall),
                "");
        return unworded.withWhy(new Reason(costs, settings, unread, today)
                .of(unworded, copied.get(type), slowing, causes.all(unworded)));
    }

    private double measured(int type) {
        return copied.containsKey(type) ? copied.get(type).load(totals.load(type)) : totals.load(type);
    }

    private Verdict verdict(boolean known, double load, double underP, double overP, long shortfall) {
        if (!known) {
            return Verdict.TOO_FEW_JOBS;
        }
        boolean matters = StrictMath.abs(shortfall) >= settings.materiality(costs.shopRate());
        if (load > 1 + settings.tolerance()) {
            boolean sure = underP <= settings.falseDiscovery();
            return sure && matters ? Verdict.UNDER_QUOTED : Verdict.LEANING_UNDER;
        }
        if (load < 1 - settings.tolerance()) {
            boolean sure = overP <= settings.falseDiscovery();
            return sure && matters ? Verdict.OVER_QUOTED : Verdict.LEANING_OVER;
        }
        return Verdict.ON_THE_MARK;
    }

    /** Money a year at the shop's rate if the type goes on taking {@code load} hours per quoted hour. */
    private long money(int type, double load) {
        double perYear = (load - 1) * totals.yearlyHours()[type] * costs.shopRate();
        return Double.isNaN(perYear) ? 0 : (long) StrictMath.rint(perYear);
    }
}
