package benchtrue.tables;

import benchtrue.costing.CostedLines;
import benchtrue.findings.Findings;
import benchtrue.format.Words;
import benchtrue.hours.JobLines;
import benchtrue.hours.SplitEvidence;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Disclosure;
import benchtrue.settings.Settings;
import benchtrue.shop.Absent;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.RepairType;
import benchtrue.shop.Tickets;
import benchtrue.shop.WaitReason;
import java.util.Arrays;
import java.util.function.Function;

/** {@code lines.csv}: one row a quoted line, by ticket then line; the one table that is as long as the shop's history. */
final class LinesTable {
    private final CostedLines costs;
    private final Findings findings;
    private final Settings settings;
    private final JobLines jobs;
    private final Ledger ledger;
    private final QuotedLines lines;
    private final Tickets tickets;
    private final DaysWaited days;

    private LinesTable(CostedLines costs, Findings findings, Settings settings) {
        this.costs = costs;
        this.findings = findings;
        this.settings = settings;
        jobs = costs.jobs();
        ledger = jobs.ledger();
        lines = ledger.lines();
        tickets = ledger.tickets();
        days = new DaysWaited(ledger);
    }

    /** Returns the table of a shop; a row is the index of a line. Names of people are written only where the settings say so. */
    static ResultTable<Integer> of(CostedLines costs, Findings findings, Settings settings) {
        LinesTable table = new LinesTable(costs, findings, settings);
        return table.judged(table.days(table.told(table.money(table.quoted()))));
    }

    private ResultTable<Integer> quoted() {
        String[] families = ofBook(RepairType::family);
        return ResultTable.<Integer>of("lines", "One row is one quoted line")
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
                .text("quoted_by", "who wrote the quote", line -> person(tickets.quotedBy(lines.ticket(line))))
                .day("opened", "first day of the visit", line -> tickets.opened(lines.ticket(line)))
                .day("closed", "last day of the visit", line -> tickets.closed(lines.ticket(line)))
                .text("state", "void, declined, closed or open", line -> Words.of(jobs.state(line)))
                .seconds("quoted_hours", "first accepted quote", lines::judgedSeconds)
                .seconds("book_hours_then", "the price book when it was quoted", jobs::bookSecondsThen)
                .seconds("actual_hours", "taken at the bench", jobs::actualSeconds)
                .seconds("labelled_hours", "of them, logged to the line", jobs::labelledSeconds)
                .seconds("split_hours", "of them, its share of time logged to the whole ticket", jobs::splitSeconds)
                .seconds("rework_hours", "taken later to put it right; they stand in other lines", jobs::reworkSeconds)
                .text(
                        "main_technician",
                        "who worked on it most",
                        line -> person(ledger.technicians().name(jobs.mainTechnician(line))));
    }

    private String person(String name) {
        return settings.people() == Disclosure.SHOWN ? name : "";
    }

    /** Returns by repair type what today's book, or the last that had it, says of it. */
    private String[] ofBook(Function<RepairType, String> what) {
        return ledger.repairTypes().all().stream()
                .map(type -> ledger.books().type(type, ledger.asOf()).map(what).orElse(""))
                .toArray(String[]::new);
    }

    private ResultTable<Integer> money(ResultTable<Integer> table) {
        return table.money("labour_revenue", "labour charged", costs::labourRevenue)
                .money("parts_revenue", "parts charged", costs::partsRevenue)
                .money("labour_cost", "wages with on-costs", costs::labourCost)
                .money("parts_cost", "parts and outside work at cost", costs::partsCost)
                .money("overhead_cost", "overhead carried by its bench hours", costs::overheadCost)
                .money("margin", "what is left", costs::margin)
                .money("effective_rate", "labour charged for an hour taken", costs::effectiveRate);
    }

    private ResultTable<Integer> told(ResultTable<Integer> table) {
        String[] titles = ofBook(RepairType::title);
        return table.text("title", "the repair's title", line -> titles[lines.repairType(line)])
                .month("opened_month", "month of opened", line -> tickets.opened(lines.ticket(line)))
                .month("closed_month", "month of closed", line -> tickets.closed(lines.ticket(line)))
                .day("quoted_on", "day of the quote; the first of the visit where none is recorded", ledger::quotedOn)
                .text("paid_by", "who pays", line -> Words.of(lines.paidBy(line)))
                .text("charge_kind", "what is charged for", line -> Words.of(lines.chargeKind(line)))
                .text(
                        "traits",
                        "traits of the instrument",
                        line -> String.join(";", tickets.traits(lines.ticket(line))))
                .count("built_year", "year it was built", line -> year(tickets.builtYear(lines.ticket(line))))
                .day("promised", "promised day", line -> tickets.promised(lines.ticket(line)))
                .day("finished", "day the bench work was done", line -> tickets.finished(lines.ticket(line)));
    }

    private static long year(int year) {
        return Absent.has(year) ? year : Absent.AMOUNT;
    }

    private ResultTable<Integer> days(ResultTable<Integer> table) {
        return table.count(
                        "days_in_shop",
                        "calendar days on the shop's hands, first and last included",
                        line -> days.inShop(lines.ticket(line)))
                .count(
                        "days_waited",
                        "of them, days on which it waited, for whatever reason",
                        line -> days.waited(lines.ticket(line)));
    }

    private ResultTable<Integer> judged(ResultTable<Integer> table) {
        String[] verdicts = new String[ledger.repairTypes().size()];
        Arrays.fill(verdicts, "");
        findings.repairs()
                .forEach(finding ->
                        verdicts[finding.repairType()] = finding.verdict().words());
        table.text("found", "whether it was found and quoted after the visit began", line -> yes(jobs.foundLater(line)))
                .text(
                        "copied",
                        "whether its hours are more likely copied from the quote than measured",
                        line -> yes(findings.copiedLines().contains(line)))
                .text("own_hours", "whether all of its hours are its own, none dealt from the ticket", this::own)
                .day(
                        "book_version",
                        "first day of the price book that it was quoted by",
                        line -> ledger.books().inForce(ledger.quotedOn(line)).effective())
                .text("verdict", "the repair's verdict", line -> verdicts[lines.repairType(line)])
                .month("quoted_month", "month of quoted_on", ledger::quotedOn)
                .count("built_decade", "decade it was built in", line -> decade(tickets.builtYear(lines.ticket(line))));
        for (WaitReason reason : WaitReason.values()) {
            String word = Words.of(reason);
            table.count(
                    "waited_" + word.replace('-', '_'),
                    "days on which it waited for: " + word,
                    line -> days.waited(lines.ticket(line), reason));
        }
        return table.text("counted", "whether it counts in the findings", line -> yes(jobs.judged(line)))
                .hours("quoted_hours_today", "its quote brought to today's price book", jobs::todayQuotedHours);
    }

    private static String yes(boolean is) {
        return is ? "yes" : "no";
    }

    private String own(int line) {
        SplitEvidence evidence = jobs.evidence(line);
        return evidence == SplitEvidence.NONE ? "" : yes(evidence == SplitEvidence.LOGGED);
    }

    private static long decade(int year) {
        return Absent.has(year) ? Math.floorDiv(year, 10) * 10L : Absent.AMOUNT;
    }
}
