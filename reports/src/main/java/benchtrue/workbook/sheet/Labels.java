package benchtrue.workbook.sheet;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.RepairType;

/** What the bench calls a repair type: its title in the newest book, else its key. */
public final class Labels {
    private final Ledger ledger;

    public Labels(Ledger ledger) {
        this.ledger = ledger;
    }

    public String of(int repairType) {
        String key = ledger.repairTypes().name(repairType);
        return ledger.books()
                .type(key, ledger.asOf())
                .map(RepairType::title)
                .filter(title -> !title.isBlank())
                .orElse(key);
    }
}
