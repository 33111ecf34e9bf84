package benchtrue.tables;

import benchtrue.costing.CostedLines;
import benchtrue.costing.OpenLine;
import benchtrue.reconcile.Ledger;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** {@code open-lines.csv}: one row a line of an open ticket, by ticket then line, with the hours it will have taken. */
final class OpenLinesTable {
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
