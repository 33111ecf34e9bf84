package benchtrue.tables;

import benchtrue.findings.Findings;
import benchtrue.findings.RepairFinding;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.RepairType;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** {@code findings.csv}: one row a repair type, by its key. */
final class FindingsTable {
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
