package benchtrue.tables;

import benchtrue.costing.CostedLines;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.LineState;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.RepairType;
import benchtrue.shop.Tickets;
import benchtrue.shop.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Writes the one table that is as long as the shop's history; its columns are the data contract's. */
public final class WriteLines {
    /** One row a quoted line: its hours and its money. */
    public static final String LINES = "lines.csv";

    /** Writes {@code lines.csv} into a folder that exists. */
    public void write(CostedLines costs, Path folder) throws IOException {
        new LinesTable(costs).write(folder.resolve(LINES));
    }

    /** {@code lines.csv}: one row a quoted line, by ticket then line. */
    static final class LinesTable {
        private static final List<String> HEADER = List.of(
                "ticket",
                "line",
                "repair_type",
                "family",
                "instrument_class",
                "quoted_by",
                "opened",
                "closed",
                "state",
                "quoted_hours",
                "book_hours_then",
                "actual_hours",
                "labelled_hours",
                "split_hours",
                "rework_hours",
                "main_technician",
                "labour_revenue",
                "parts_revenue",
                "labour_cost",
                "parts_cost",
                "overhead_cost",
                "margin",
                "effective_rate");
        private static final byte[] NOBODY = {};

        private final CostedLines costs;
        private final JobLines jobs;
        private final Ledger ledger;
        private final byte[][] types;
        private final byte[][] families;
        private final byte[][] technicians;
        private final Map<LineState, byte[]> states = new EnumMap<>(LineState.class);

        LinesTable(CostedLines costs) {
            this.costs = costs;
            this.jobs = costs.jobs();
            this.ledger = jobs.ledger();
            List<String> keys = ledger.repairTypes().all();
            this.types = cells(keys);
            this.families = cells(keys.stream().map(this::family).toList());
            this.technicians = cells(ledger.technicians().all());
            for (LineState state : LineState.values()) {
                states.put(state, CsvFile.cell(Words.of(state)));
            }
        }

        private static byte[][] cells(List<String> words) {
            return words.stream().map(CsvFile::cell).toArray(byte[][]::new);
        }

        private String family(String type) {
            return ledger.books()
                    .type(type, ledger.asOf())
                    .map(RepairType::family)
                    .orElse("");
        }

        void write(Path file) throws IOException {
            try (CsvFile csv = CsvFile.create(file, HEADER)) {
                for (int line = 0; line < jobs.size(); line++) {
                    job(csv, line);
                    hours(csv, line);
                    money(csv, line);
                    csv.endRow();
                }
            }
        }

        private void job(CsvFile csv, int line) throws IOException {
            QuotedLines lines = ledger.lines();
            Tickets tickets = ledger.tickets();
            int ticket = lines.ticket(line);
            int type = lines.repairType(line);
            csv.text(tickets.ticket(ticket))
                    .text(lines.line(line))
                    .cell(types[type])
                    .cell(families[type])
                    .text(tickets.instrumentClass(ticket))
                    .text(tickets.quotedBy(ticket))
                    .day(tickets.opened(ticket))
                    .day(tickets.closed(ticket))
                    .cell(states.get(jobs.state(line)));
        }

        private void hours(CsvFile csv, int line) throws IOException {
            int technician = jobs.mainTechnician(line);
            csv.hours(ledger.lines().judgedSeconds(line))
                    .hours(jobs.bookSecondsThen(line))
                    .hours(jobs.actualSeconds(line))
                    .hours(jobs.labelledSeconds(line))
                    .hours(jobs.splitSeconds(line))
                    .hours(jobs.reworkSeconds(line))
                    .cell(technician == Absent.INDEX ? NOBODY : technicians[technician]);
        }

        private void money(CsvFile csv, int line) throws IOException {
            csv.money(costs.labourRevenue(line))
                    .money(costs.partsRevenue(line))
                    .money(costs.labourCost(line))
                    .money(costs.partsCost(line))
                    .money(costs.overheadCost(line))
                    .money(costs.margin(line))
                    .money(costs.effectiveRate(line));
        }
    }
}
