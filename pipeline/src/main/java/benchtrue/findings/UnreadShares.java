package benchtrue.findings;

import benchtrue.reconcile.Completeness;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Settings;
import java.util.List;

/**
 * What the hours that could not be read may mean for each repair: how far its load factor may be too low for hours that are
 * missing, or too high for hours that belong to a line that was not read.
 */
public final class UnreadShares {
    private final Completeness completeness;
    private final double most;
    private final double[] own;
    private final LoadReach reach;
    private final double all;

    private UnreadShares(Ledger ledger, Settings settings, double[] own, LoadReach reach) {
        this.reach = reach;
        completeness = ledger.completeness();
        most = settings.mostUnreadShare();
        this.own = own;
        double sum = 0;
        for (double seconds : own) {
            sum += seconds;
        }
        all = sum;
    }

    static UnreadShares of(Ledger ledger, Settings settings, TypeTotals totals, LoadReach reach) {
        double[] own = new double[totals.actualSeconds().length];
        for (int type = 0; type < own.length; type++) {
            own[type] = totals.actualSeconds()[type];
        }
        return new UnreadShares(ledger, settings, own, reach);
    }

    /** Takes the hours of repairs from what was found about them. */
    public static UnreadShares of(Ledger ledger, Settings settings, List<RepairFinding> repairs, LoadReach reach) {
        double[] own = new double[ledger.repairTypes().size()];
        repairs.forEach(finding -> own[finding.repairType()] = finding.actualSeconds());
        return new UnreadShares(ledger, settings, own, reach);
    }

    /** Returns the factor, at least 1, by which a repair's load may really be higher. */
    public double higher(int type) {
        return (1 + completeness.missingOver(type, own[type], all)) * reach.higher()[type];
    }

    /** Returns the factor, at most 1, by which a repair's load may really be lower. */
    public double lower(int type) {
        return (1 - foreign(type)) * reach.lower()[type];
    }

    /** Returns what rounding, or a pace that is not sure, may have done to a repair's load. */
    LoadReach reach() {
        return reach;
    }

    /** Returns the share of a repair's hours that may be missing. */
    public double missing(int type) {
        return 1 - 1 / (1 + completeness.missingOver(type, own[type], all));
    }

    /** Returns the share of a repair's hours that may belong to lines that were not read. */
    double foreign(int type) {
        return completeness.foreignShare(type, own[type]);
    }

    /** Returns whether so much may be missing or foreign that a repair is not judged. */
    boolean holds(int type) {
        return completeness.tooLittle() || missing(type) > most || foreign(type) > most;
    }

    /** Returns a load moved towards 1 by what was not read, never beyond it: the change that is sure. */
    public double careful(int type, double factor) {
        if (Double.isNaN(factor)) {
            return factor;
        }
        return factor < 1 ? StrictMath.min(1, factor * higher(type)) : StrictMath.max(1, factor * lower(type));
    }
}
