package benchtrue.tables;

import benchtrue.costing.CostedLines;
import benchtrue.costing.OpenLine;
import benchtrue.findings.Findings;
import benchtrue.findings.RepairFinding;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.BackTest;
import benchtrue.revision.CutOff;
import benchtrue.revision.PastMethod;
import benchtrue.revision.PastScore;
import benchtrue.revision.ProposedChange;
import benchtrue.revision.Revision;
import benchtrue.shop.RepairType;
import benchtrue.shop.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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

    /** {@code backtest.csv}: one row a method and cut-off; the loss is summed over the jobs, in hours. */
    static final class BackTestTable {
        private static final List<String> HEADER =
                List.of("method", "cutoff", "lines", "pinball_loss", "coverage", "hours_bias");

        private BackTestTable() {}

        static void write(BackTest test, Path file) throws IOException {
            try (CsvFile csv = CsvFile.create(file, HEADER)) {
                for (CutOff cutOff : test.cutOffs()) {
                    for (Map.Entry<PastMethod, PastScore> row : cutOff.scores().entrySet()) {
                        PastScore score = row.getValue();
                        csv.text(Words.of(row.getKey()))
                                .day(cutOff.day())
                                .count(score.lines())
                                .hours(score.loss())
                                .ratio(score.coverage())
                                .ratio(score.hoursBias())
                                .endRow();
                    }
                }
            }
        }
    }

    /** {@code revision.csv}: one row a repair type of today's book, by its key. */
    static final class RevisionTable {
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

    /** {@code open-lines.csv}: one row a line of an open ticket, by ticket then line, with the hours it will have taken. */
    static final class OpenLinesTable {
        private static final List<String> HEADER = List.of(
                "ticket",
                "line",
                "repair_type",
                "opened",
                "promised",
                "quoted_hours",
                "hours_so_far",
                "expected_hours",
                "lower",
                "upper",
                "chance_over_quote");

        private OpenLinesTable() {}

        static void write(CostedLines costs, Path file) throws IOException {
            Ledger ledger = costs.jobs().ledger();
            try (CsvFile csv = CsvFile.create(file, HEADER)) {
                for (OpenLine open : costs.shop().backlog().lines()) {
                    int ticket = ledger.lines().ticket(open.line());
                    csv.text(ledger.tickets().ticket(ticket))
                            .text(ledger.lines().line(open.line()))
                            .text(ledger.repairTypes().name(ledger.lines().repairType(open.line())))
                            .day(ledger.tickets().opened(ticket))
                            .day(ledger.tickets().promised(ticket))
                            .hours(open.quotedSeconds())
                            .hours(open.secondsSoFar())
                            .hours(open.expectedHours())
                            .hours(open.lower())
                            .hours(open.upper())
                            .ratio(open.chanceOver());
                    csv.endRow();
                }
            }
        }
    }

    /** {@code findings.csv}: one row a repair type, by its key. */
    static final class FindingsTable {
        private static final List<String> HEADER = List.of(
                "repair_type",
                "title",
                "family",
                "lines",
                "quoted_hours",
                "actual_hours",
                "load_factor",
                "typical_factor",
                "lower",
                "upper",
                "chance_over",
                "adjusted_p",
                "annual_shortfall",
                "verdict",
                "why");

        private FindingsTable() {}

        static void write(Findings findings, Ledger ledger, Path file) throws IOException {
            try (CsvFile csv = CsvFile.create(file, HEADER)) {
                for (RepairFinding finding : findings.repairs()) {
                    row(csv, finding, ledger);
                }
            }
        }

        private static void row(CsvFile csv, RepairFinding finding, Ledger ledger) throws IOException {
            String key = ledger.repairTypes().name(finding.repairType());
            Optional<RepairType> type = ledger.books().type(key, ledger.asOf());
            csv.text(key)
                    .text(type.map(RepairType::title).orElse(""))
                    .text(type.map(RepairType::family).orElse(""))
                    .count(finding.lines())
                    .hours(finding.quotedHours())
                    .hours(finding.actualSeconds())
                    .ratio(finding.loadFactor())
                    .ratio(finding.typicalFactor())
                    .ratio(finding.lower())
                    .ratio(finding.upper())
                    .ratio(finding.chanceOver())
                    .ratio(finding.adjustedP())
                    .money(finding.annualShortfall())
                    .text(finding.verdict().words())
                    .text(finding.why())
                    .endRow();
        }
    }
}
