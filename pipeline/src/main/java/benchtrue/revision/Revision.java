package benchtrue.revision;

import benchtrue.reconcile.Ledger;
import benchtrue.shop.PriceBook;
import java.util.List;
import java.util.Optional;

/**
 * The drafted price book.
 *
 * @param changes one row a repair type of the book that it stands against, by code
 * @param lastChange what became of the last change of the book; empty where there was none
 * @param backTest how such proposals did on past jobs
 * @param surcharges lines that the book could have for traits of the instrument
 * @param conditions lines with conditions that the book has or could have
 * @param sizeLines lines that the book could have for small and large quotes
 * @param coming price books for days to come, the earliest first
 */
public record Revision(
        List<ProposedChange> changes,
        Optional<LastChange> lastChange,
        BackTest backTest,
        List<SurchargeLine> surcharges,
        List<ProposedSurcharge> conditions,
        List<SizeLines> sizeLines,
        List<ComingBook> coming) {
    public Revision {
        changes = List.copyOf(changes);
        surcharges = List.copyOf(surcharges);
        conditions = List.copyOf(conditions);
        sizeLines = List.copyOf(sizeLines);
        coming = List.copyOf(coming);
    }

    /** Returns the price book that the draft stands against: the newest adopted one, else the one in force. */
    public PriceBook against(Ledger ledger) {
        return against(coming, ledger);
    }

    static PriceBook against(List<ComingBook> coming, Ledger ledger) {
        return coming.isEmpty()
                ? ledger.books().inForce(ledger.asOf())
                : coming.get(coming.size() - 1).book();
    }
}
