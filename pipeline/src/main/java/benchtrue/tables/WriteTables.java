package benchtrue.tables;

import benchtrue.costing.CostedLines;
import benchtrue.findings.Findings;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.Revision;
import java.io.IOException;
import java.nio.file.Path;

/** Writes the tables that other programs read, but for {@link WriteLines the lines}; names and order of their columns are the data contract's. */
public final class WriteTables {
    /** One row a repair type: what was found. */
    public static final String FINDINGS = "findings.csv";

    /** One row a repair type: what is proposed. */
    public static final String REVISION = "revision.csv";

    /** Writes the small tables of a review, all but {@code lines.csv}, into a folder that exists. */
    public void write(CostedLines costs, Findings findings, Revision revision, Path folder) throws IOException {
        Ledger ledger = costs.jobs().ledger();
        OpenLinesTable.write(costs, folder.resolve("open-lines.csv"));
        FindingsTable.write(findings, ledger, folder.resolve(FINDINGS));
        RevisionTable.write(revision, ledger, folder.resolve(REVISION));
        BackTestTable.write(revision.backTest(), folder.resolve("backtest.csv"));
    }
}
