package benchtrue.tables;

import benchtrue.reconcile.Ledger;
import benchtrue.revision.ProposedChange;
import benchtrue.revision.Revision;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** {@code revision.csv}: one row a repair type of today's book, by its key. */
final class RevisionTable {
    private static final List<String> HEADER = List.of(
            "repair_type",
            "book_hours",
            "proposed_hours",
            "proposed_labour",
            "coverage_before",
            "coverage_after",
            "annual_effect",
            "basis",
            "held_because");

    private RevisionTable() {}

    static void write(Revision revision, Ledger ledger, Path file) throws IOException {
        try (CsvFile csv = CsvFile.create(file, HEADER)) {
            for (ProposedChange change : revision.changes()) {
                csv.text(ledger.repairTypes().name(change.repairType()))
                        .hours(change.bookSeconds())
                        .hours(change.proposedSeconds())
                        .money(change.proposedLabour())
                        .ratio(change.coverageBefore())
                        .ratio(change.coverageAfter())
                        .money(change.annualEffect())
                        .text(change.basis())
                        .text(change.heldBecause())
                        .endRow();
            }
        }
    }
}
