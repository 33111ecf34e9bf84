package benchtrue.revision;

import java.util.List;
import java.util.Optional;

/**
 * The drafted price book.
 *
 * @param changes one row a repair type of today's book, by code
 * @param lastChange what became of the last change of the book; empty where there was none
 * @param backTest how such proposals did on past jobs
 * @param surcharges lines that the book could have for traits of the instrument
 */
public record Revision(
        List<ProposedChange> changes,
        Optional<LastChange> lastChange,
        BackTest backTest,
        List<SurchargeLine> surcharges) {
    public Revision {
        changes = List.copyOf(changes);
        surcharges = List.copyOf(surcharges);
    }

    /** Takes the draft of a young shop that never changed its price book. */
    public Revision(List<ProposedChange> changes) {
        this(changes, Optional.empty(), BackTest.none(), List.of());
    }
}
