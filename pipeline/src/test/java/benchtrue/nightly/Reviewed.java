package benchtrue.nightly;

import benchtrue.ShopBuilder;
import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.costing.Restatement;
import benchtrue.findings.FindVerdicts;
import benchtrue.findings.Findings;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.ProposeRevision;
import benchtrue.settings.Settings;
import java.util.List;
import java.util.SortedMap;

/** Takes a shop through the stages to what a night tells of it. */
final class Reviewed {
    private Reviewed() {}

    static Review shop(ShopBuilder shop, List<Restatement> restatements, SortedMap<String, Long> setAside) {
        Settings settings = Settings.DEFAULTS;
        Ledger ledger = shop.build();
        JobLines jobs = new SplitHours().split(ledger, settings);
        CostedLines costs = new CostLines().cost(jobs, settings);
        Findings findings = new FindVerdicts().find(costs, settings);
        return new Review(
                settings,
                ledger,
                jobs,
                costs,
                findings,
                new ProposeRevision().propose(costs, findings, settings, List.of()),
                costs.balances(),
                List.of(),
                restatements,
                setAside);
    }
}
