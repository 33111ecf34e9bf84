package benchtrue.workbook;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.RepairType;

/** What the bench calls a repair type: its title in the newest book, else its key. */
final class Labels {
    private final Ledger ledger;

    Labels(Ledger ledger) {
        this.ledger = ledger;
    }

    String of(int repairType) {
        String key = ledger.repairTypes().name(repairType);
        return ledger.books()
                .type(key, ledger.asOf())
                .map(RepairType::title)
                .filter(title -> !title.isBlank())
                .orElse(key);
    }
}
