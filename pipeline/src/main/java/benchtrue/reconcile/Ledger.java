package benchtrue.reconcile;

import benchtrue.intake.columns.Need;
import benchtrue.intake.columns.Table;
import benchtrue.shop.Absent;
import benchtrue.shop.Names;
import benchtrue.shop.Overhead;
import benchtrue.shop.PaidHours;
import benchtrue.shop.PartUses;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.RepairType;
import benchtrue.shop.Tickets;
import benchtrue.shop.TimeEntries;
import benchtrue.shop.Wage;
import benchtrue.shop.Wait;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Everything the shop recorded up to the as-of date, keys unique and references resolved.
 *
 * @param asOf the as-of date; nothing after it is in here
 * @param repairTypes names of repair types: of every price book, and {@code one-off} where used
 * @param technicians names of technicians in the time log or on the wage list
 * @param books all price-book versions
 * @param tickets by key
 * @param lines by ticket then line key
 * @param time by ticket then day; entries without a ticket and shared ones first
 * @param partUses by ticket
 * @param wages by technician then date; empty where the table is missing
 * @param paidHours by technician then month; empty where the table is missing
 * @param overheads by month then account; empty where the table is missing
 * @param waits by ticket then date; empty where the table is missing
 * @param completeness how much of what was logged could be read
 * @param missing names of the tables that were not there, such as {@code paid-hours}
 */
public record Ledger(
        int asOf,
        Names repairTypes,
        Names technicians,
        Names parts,
        PriceBooks books,
        Tickets tickets,
        QuotedLines lines,
        TimeEntries time,
        PartUses partUses,
        List<Wage> wages,
        List<PaidHours> paidHours,
        List<Overhead> overheads,
        List<Wait> waits,
        Completeness completeness,
        Set<String> missing) {
    public Ledger {
        wages = List.copyOf(wages);
        paidHours = List.copyOf(paidHours);
        overheads = List.copyOf(overheads);
        waits = List.copyOf(waits);
        missing = Set.copyOf(missing);
    }

    /** Returns the first day of the visit that a line is of. */
    public int opened(int line) {
        return tickets.opened(lines.ticket(line));
    }

    /** Returns the day a line was quoted on; the first day of its visit where none was recorded. */
    public int quotedOn(int line) {
        return Absent.firstOf(lines.quotedOn(line), opened(line));
    }

    /** Returns what the bench calls a repair type, by its code: its title in the newest book that has it, else its key. */
    public String title(int repairType) {
        String key = repairTypes.name(repairType);
        return books.type(key, asOf)
                .map(RepairType::title)
                .filter(title -> !title.isBlank())
                .orElse(key);
    }

    /** Returns what the bench calls several repair types, each once, in one text. */
    public String titles(List<Integer> types) {
        return types.stream().map(this::title).distinct().collect(Collectors.joining(", "));
    }

    /** Returns whether the shop keeps a price book; else what was usually quoted stands for it. */
    public boolean hasBook() {
        return !missing.contains(Table.PRICE_BOOK.title());
    }

    /** Returns the names of missing tables whose results are left out. */
    public List<String> leftOut() {
        return Stream.of(Table.values())
                .filter(table -> table.need() == Need.OPTIONAL && missing.contains(table.title()))
                .map(Table::title)
                .sorted()
                .toList();
    }
}
