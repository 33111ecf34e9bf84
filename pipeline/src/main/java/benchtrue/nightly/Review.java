package benchtrue.nightly;

import benchtrue.costing.CostedLines;
import benchtrue.findings.Findings;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.Revision;
import benchtrue.settings.Settings;
import benchtrue.shop.Balance;
import java.util.List;

/**
 * Everything a report may show of one night.
 *
 * @param settings the shop's settings
 * @param ledger what the shop recorded
 * @param jobs every line with its hours
 * @param costs every line with its money
 * @param findings what the review found
 * @param revision the drafted price book
 * @param balances rows, hours and money: read against where it went, all proved
 */
public record Review(
        Settings settings,
        Ledger ledger,
        JobLines jobs,
        CostedLines costs,
        Findings findings,
        Revision revision,
        List<Balance> balances) {
    public Review {
        balances = List.copyOf(balances);
    }
}
