package benchtrue.nightly;

import benchtrue.costing.CostLines;
import benchtrue.costing.CostedLines;
import benchtrue.findings.FindVerdicts;
import benchtrue.findings.Findings;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitHours;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.ProposeRevision;
import benchtrue.revision.Revision;
import benchtrue.settings.Settings;
import benchtrue.shop.Balance;
import java.util.ArrayList;
import java.util.List;

/** The computing half of a night: the stages in order, from what the shop recorded to what the owner decides on. */
final class ReviewLedger {
    /** How many stages are announced. */
    static final int STAGES = 4;

    private final Stages stages;

    ReviewLedger(Stages stages) {
        this.stages = stages;
    }

    /**
     * Returns the review of a ledger.
     *
     * @param read the balances of what was read, in which the ledger is one term
     */
    Review review(Ledger ledger, Settings settings, List<Balance> read) {
        JobLines jobs = stages.run("Putting hours on lines", () -> new SplitHours().split(ledger, settings));
        CostedLines costs = stages.run("Costing every line", () -> new CostLines().cost(jobs, settings));
        Findings findings = stages.run("Telling faults from noise", () -> new FindVerdicts().find(costs, settings));
        Revision revision =
                stages.run("Drafting the price book", () -> new ProposeRevision().propose(costs, findings, settings));
        List<Balance> balances = new ArrayList<>(read);
        balances.addAll(costs.balances());
        return new Review(settings, ledger, jobs, costs, findings, revision, balances);
    }
}
