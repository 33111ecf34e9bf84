package benchtrue.reconcile;

import benchtrue.intake.Exports;
import benchtrue.settings.Settings;

/** Brings all rows together into one ledger. */
public final class Reconcile {
    /**
     * Decides which rows count, resolves every reference and proves the balances.
     *
     * @param exports everything that stands in the shop's files
     * @param settings the shop's settings
     * @param asOf the as-of date in days since 1970-01-01; later rows enter no figure
     * @throws benchtrue.shop.Refusal where a version of the price book holds nothing that can be used, and where the settings name
     *     a family that stands in no version
     * @throws IllegalStateException where a balance fails: a fault of the program
     */
    public Reconciled reconcile(Exports exports, Settings settings, int asOf) {
        Reconciled reconciled = new BuildLedger(exports, settings.zone(), asOf).build();
        KnownFamilies.check(settings.policy(), reconciled.ledger().books());
        return reconciled;
    }
}
