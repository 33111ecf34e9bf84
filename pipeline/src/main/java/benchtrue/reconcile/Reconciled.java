package benchtrue.reconcile;

import benchtrue.intake.columns.InputFile;
import benchtrue.shop.Balance;
import benchtrue.shop.Notice;
import java.util.List;

/**
 * The ledger, and an account of everything that was read.
 *
 * @param ledger what the shop recorded, usable rows only
 * @param balances rows of each file, hours and money: read against where it went
 * @param notices doubtful, changed and unread things, counted, with a few examples
 * @param setAside the rows that can't be used
 * @param files every file that was read
 */
public record Reconciled(
        Ledger ledger, List<Balance> balances, List<Notice> notices, SetAside setAside, List<InputFile> files) {
    public Reconciled {
        balances = List.copyOf(balances);
        notices = List.copyOf(notices);
        files = List.copyOf(files);
    }
}
