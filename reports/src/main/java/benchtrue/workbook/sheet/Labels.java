package benchtrue.workbook.sheet;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.RepairType;
import java.util.List;
import java.util.stream.Collectors;

/** What the bench calls a repair type: its title in the newest book, else its key. */
public final class Labels {
    private final Ledger ledger;

    public Labels(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Returns several in one text. */
    public String of(List<Integer> repairTypes) {
        return repairTypes.stream().map(this::of).distinct().collect(Collectors.joining(", "));
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
