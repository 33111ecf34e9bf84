package benchtrue;

import benchtrue.calendar.PlanCalendar;
import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.findings.FindVerdicts;
import benchtrue.findings.Findings;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.nightly.Review;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.AlreadyDecided;
import benchtrue.revision.ProposeRevision;
import benchtrue.revision.Revision;
import benchtrue.settings.Settings;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** Takes a shop through the stages to what a report is given. */
public final class ReviewOf {
    private ReviewOf() {}

    public static Review shop(ShopBuilder shop) {
        return ledger(shop.build(), Settings.DEFAULTS);
    }

    public static Review ledger(Ledger ledger, Settings settings) {
        JobLines jobs = new SplitHours().split(ledger, settings);
        CostedLines costs = new CostLines().cost(jobs, settings);
        Findings findings = new FindVerdicts().find(costs, settings);
        return found(
                settings,
                costs,
                findings,
                new ProposeRevision().propose(costs, findings, settings, AlreadyDecided.NOTHING));
    }

    /** Returns the review of a shop whose rows were all used without a doubt. */
    public static Review found(Settings settings, CostedLines costs, Findings findings, Revision revision) {
        return new Review(
                settings,
                costs.jobs().ledger(),
                costs.jobs(),
                costs,
                new PlanCalendar().plan(costs, settings),
                findings,
                revision,
                costs.balances(),
                List.of(),
                List.of(),
                new TreeMap<>(),
                List.of(),
                Optional.empty());
    }
}
