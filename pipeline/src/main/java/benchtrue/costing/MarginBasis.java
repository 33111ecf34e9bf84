package benchtrue.costing;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import java.util.ArrayList;
import java.util.List;

/**
 * Which costs the shop's files can tell at all, so that a margin says what it is after.
 *
 * @param wages whether wages are known
 * @param parts whether parts are known
 * @param overheads whether overheads are known
 */
record MarginBasis(boolean wages, boolean parts, boolean overheads) {
    static MarginBasis of(Ledger ledger) {
        return new MarginBasis(
                !ledger.wages().isEmpty(),
                !ledger.missing().contains("parts-usage"),
                !ledger.overheads().isEmpty());
    }

    /** Returns whether all the costs that this basis can tell are known of a line, and its labour revenue. */
    boolean knownOf(CostedLines costs, int line) {
        return Absent.has(costs.labourRevenue(line))
                && (!wages || Absent.has(costs.labourCost(line)))
                && (!parts || Absent.has(costs.partsCost(line)))
                && (!overheads || Absent.has(costs.overheadCost(line)));
    }

    /** Returns what the missing tables leave out, one sentence each. */
    List<String> leftOut(Ledger ledger) {
        List<String> sentences = new ArrayList<>();
        if (!wages) {
            sentences.add("Without the table technicians: what labour costs, margins and why the month moved.");
        }
        if (!parts) {
            sentences.add("Without the table parts-usage: what parts cost; margins here are on labour alone.");
        }
        if (!overheads) {
            sentences.add("Without the table overheads: overhead carried by jobs, break-even; margins here are before"
                    + " overhead.");
        }
        if (ledger.paidHours().isEmpty()) {
            sentences.add(
                    "Without the table paid-hours: how much paid time reached the log, and the share of it sold.");
        }
        if (ledger.missing().contains("waits")) {
            sentences.add("Without the table waits: how long instruments waited and why.");
        }
        return sentences;
    }
}
