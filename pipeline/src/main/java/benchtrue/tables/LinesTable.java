package benchtrue.tables;

import benchtrue.costing.CostedLines;
import benchtrue.format.Words;
import benchtrue.hours.JobLines;
import benchtrue.reconcile.Ledger;
import benchtrue.shop.Absent;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.RepairType;
import benchtrue.shop.Tickets;

/** {@code lines.csv}: one row a quoted line, by ticket then line; the one table that is as long as the shop's history. */
final class LinesTable {
    private LinesTable() {}

    /** Returns the table of a shop; a row is the index of a line. */
    static ResultTable<Integer> of(CostedLines costs) {
        JobLines jobs = costs.jobs();
        Ledger ledger = jobs.ledger();
        QuotedLines lines = ledger.lines();
        Tickets tickets = ledger.tickets();
        String[] families = ledger.repairTypes().all().stream()
                .map(type -> ledger.books()
                        .type(type, ledger.asOf())
                        .map(RepairType::family)
                        .orElse(""))
                .toArray(String[]::new);
        ResultTable<Integer> table = ResultTable.<Integer>of("lines", "One row is one quoted line")
                .text("ticket", "the visit's key", line -> tickets.ticket(lines.ticket(line)))
                .text("line", "the line's key within the ticket", lines::line)
                .text(
                        "repair_type",
                        "key of the repair",
                        line -> ledger.repairTypes().name(lines.repairType(line)))
                .text("family", "family of the repair", line -> families[lines.repairType(line)])
                .text(
                        "instrument_class",
                        "class of the instrument",
                        line -> tickets.instrumentClass(lines.ticket(line)))
                .text("quoted_by", "who wrote the quote", line -> tickets.quotedBy(lines.ticket(line)))
                .day("opened", "first day of the visit", line -> tickets.opened(lines.ticket(line)))
                .day("closed", "last day of the visit", line -> tickets.closed(lines.ticket(line)))
                .text("state", "void, declined, closed or open", line -> Words.of(jobs.state(line)))
                .seconds("quoted_hours", "first accepted quote", lines::judgedSeconds)
                .seconds("book_hours_then", "the price book when it was quoted", jobs::bookSecondsThen)
                .seconds("actual_hours", "taken at the bench", jobs::actualSeconds)
                .seconds("labelled_hours", "of them, logged to the line", jobs::labelledSeconds)
                .seconds("split_hours", "of them, its share of time logged to the whole ticket", jobs::splitSeconds)
                .seconds("rework_hours", "taken later to put it right; they stand in other lines", jobs::reworkSeconds)
                .text("main_technician", "who worked on it most", line -> technician(jobs, line));
        return money(table, costs);
    }

    private static String technician(JobLines jobs, int line) {
        int technician = jobs.mainTechnician(line);
        return technician == Absent.INDEX ? "" : jobs.ledger().technicians().name(technician);
    }

    private static ResultTable<Integer> money(ResultTable<Integer> table, CostedLines costs) {
        return table.money("labour_revenue", "labour charged", costs::labourRevenue)
                .money("parts_revenue", "parts charged", costs::partsRevenue)
                .money("labour_cost", "wages with on-costs", costs::labourCost)
                .money("parts_cost", "parts and outside work at cost", costs::partsCost)
                .money("overhead_cost", "overhead carried by its bench hours", costs::overheadCost)
                .money("margin", "what is left", costs::margin)
                .money("effective_rate", "labour charged for an hour taken", costs::effectiveRate);
    }
}
