package benchtrue.tables;

import benchtrue.calendar.OpenLine;
import benchtrue.costing.CostedLines;
import benchtrue.costing.Restatement;
import benchtrue.findings.Cause;
import benchtrue.findings.RepairFinding;
import benchtrue.findings.Restorations;
import benchtrue.format.Words;
import benchtrue.reconcile.Ledger;
import benchtrue.revision.PastMethod;
import benchtrue.revision.PastScore;
import benchtrue.revision.ProposedChange;
import benchtrue.shop.Months;
import benchtrue.shop.RepairType;
import java.util.function.Function;

/** The result tables that have a row for each repair, method, open job or month. */
final class SmallTables {
    private SmallTables() {}

    /** {@code findings.csv}: one row a repair type, by its key. */
    static ResultTable<RepairFinding> findings(Ledger ledger) {
        return ResultTable.<RepairFinding>of("findings", "One row is one repair: what was found")
                .text("repair_type", "key of the repair", row -> key(ledger, row.repairType()))
                .text("title", "its title", row -> ofBook(ledger, row.repairType(), RepairType::title))
                .text("family", "its family", row -> ofBook(ledger, row.repairType(), RepairType::family))
                .count("lines", "closed, accepted lines", RepairFinding::lines)
                .hours("quoted_hours", "quoted, against today's book", RepairFinding::quotedHours)
                .seconds("actual_hours", "taken", RepairFinding::actualSeconds)
                .ratio("load_factor", "hours per quoted hour, putting right included", RepairFinding::loadFactor)
                .ratio("typical_factor", "hours per quoted hour of the usual job", RepairFinding::typicalFactor)
                .ratio("lower", "lower end of the 90 % range of load_factor", RepairFinding::lower)
                .ratio("upper", "upper end of the 90 % range of load_factor", RepairFinding::upper)
                .ratio("chance_over", "chance that load_factor lies above 1", RepairFinding::chanceOver)
                .ratio("adjusted_p", "p, corrected over all repairs", RepairFinding::adjustedP)
                .money("annual_shortfall", "lost a year", RepairFinding::annualShortfall)
                .text("verdict", "the verdict", row -> row.verdict().words())
                .text("why", "the reason in a sentence", RepairFinding::why);
    }

    /** {@code causes.csv}: one row a cause, by repair type; what is not known of people stays empty. */
    static ResultTable<Cause> causes(Ledger ledger) {
        return ResultTable.<Cause>of("causes", "One row is one cause: which jobs of a repair differ from its others")
                .text("repair_type", "key of the repair", row -> key(ledger, row.repairType()))
                .text("cause", "what sort of cause", row -> Words.of(row.kind()))
                .text("value", "which jobs", Cause::value)
                .number("jobs", "how many", row -> row.jobs() == 0 ? "" : Integer.toString(row.jobs()))
                .ratio("load_factor", "hours per quoted hour of these jobs", Cause::loadFactor)
                .ratio("lower", "lower end of the 90 % range of load_factor", Cause::lower)
                .ratio("upper", "upper end of the 90 % range of load_factor", Cause::upper)
                .ratio("adjusted_p", "p, corrected over all repairs and causes", Cause::adjustedP)
                .money("annual_effect", "more a year than at the others' hours", Cause::annualEffect)
                .text("remedy", "what follows from it", Cause::remedy);
    }

    /** {@code restorations.csv}: one row a group of large visits, judged as wholes. */
    static ResultTable<Restorations> restorations() {
        return ResultTable.<Restorations>of(
                        "restorations",
                        "One row is one group of visits with four repairs or more, or above 20 quoted hours")
                .text("by", "what the group has in common", row -> row.by().words())
                .text("group", "the group", Restorations::group)
                .count("restorations", "how many visits", Restorations::restorations)
                .hours("quoted_hours", "quoted, against today's book, found work included", Restorations::quotedHours)
                .hours("found_hours", "of these, quoted after the visit began", Restorations::foundHours)
                .hours("actual_hours", "taken", Restorations::takenHours)
                .ratio("load_factor", "hours per quoted hour", Restorations::load)
                .ratio("lower", "lower end of the 90 % range of load_factor", Restorations::lower)
                .ratio("upper", "upper end of the 90 % range of load_factor", Restorations::upper)
                .ratio("adjusted_p", "p, corrected over all groups", Restorations::adjustedP)
                .text("finding", "what follows", Restorations::told);
    }

    /** {@code revision.csv}: one row a repair type of today's book, by its key. */
    static ResultTable<ProposedChange> revision(Ledger ledger) {
        return ResultTable.<ProposedChange>of("revision", "One row is one repair: what is proposed")
                .text("repair_type", "key of the repair", row -> key(ledger, row.repairType()))
                .seconds("book_hours", "today's book", ProposedChange::bookSeconds)
                .seconds("proposed_hours", "proposed", ProposedChange::proposedSeconds)
                .money("proposed_labour", "proposed price", ProposedChange::proposedLabour)
                .ratio("coverage_before", "share of jobs that fit today's hours", ProposedChange::coverageBefore)
                .ratio("coverage_after", "share of jobs that would fit", ProposedChange::coverageAfter)
                .money("annual_effect", "more a year at last year's jobs", ProposedChange::annualEffect)
                .text("basis", "what the proposal rests on", ProposedChange::basis)
                .text("held_because", "why it is held or limited", ProposedChange::heldBecause);
    }

    /** One method's score at one cut-off. */
    record Tried(PastMethod method, int cutOff, PastScore score) {}

    /** {@code backtest.csv}: one row a method and cut-off. */
    static ResultTable<Tried> backTest() {
        return ResultTable.<Tried>of("backtest", "One row is one method at one cut-off: how it would have done")
                .text("method", "the method", row -> Words.of(row.method))
                .day("cutoff", "first day of the quarter that was foretold", Tried::cutOff)
                .count("lines", "lines that could be scored", row -> row.score.lines())
                .hours("pinball_loss", "loss in hours summed over the jobs", row -> row.score.loss())
                .ratio("coverage", "share of jobs that fit", row -> row.score.coverage())
                .ratio("hours_bias", "foretold hours over taken ones, less 1", row -> row.score.hoursBias())
                .ratio(
                        "ratio_loss",
                        "loss in hours per quoted hour summed over lines with hours of their own, each counting once",
                        row -> row.score.ratioLoss())
                .count(
                        "uncopied_lines",
                        "lines that do not repeat their quote: the figures rest on these",
                        row -> row.score.uncopiedLines());
    }

    /** {@code open-lines.csv}: one row a line of an open ticket, by ticket then line. */
    static ResultTable<OpenLine> openLines(CostedLines costs) {
        Ledger ledger = costs.jobs().ledger();
        return ResultTable.<OpenLine>of("open-lines", "One row is one line of an open ticket")
                .text(
                        "ticket",
                        "the visit's key",
                        row -> ledger.tickets().ticket(ledger.lines().ticket(row.line())))
                .text(
                        "line",
                        "the line's key within the ticket",
                        row -> ledger.lines().line(row.line()))
                .text(
                        "repair_type",
                        "key of the repair",
                        row -> key(ledger, ledger.lines().repairType(row.line())))
                .day("opened", "first day of the visit", row -> ledger.opened(row.line()))
                .day(
                        "promised",
                        "promised day",
                        row -> ledger.tickets().promised(ledger.lines().ticket(row.line())))
                .seconds("quoted_hours", "quoted", OpenLine::quotedSeconds)
                .seconds("hours_so_far", "taken so far", OpenLine::secondsSoFar)
                .hours("expected_hours", "it will have taken", OpenLine::expectedHours)
                .hours("lower", "lower end of their 90 % range", OpenLine::lower)
                .hours("upper", "upper end of their 90 % range", OpenLine::upper)
                .ratio("chance_over_quote", "chance that it takes longer than quoted", OpenLine::chanceOver);
    }

    /** {@code restatements.csv}: figures of sealed months that the records now tell otherwise, and why. */
    static ResultTable<Restatement> restatements() {
        return ResultTable.<Restatement>of("restatements", "One row is one figure of a sealed month that changed")
                .text("month", "the month", row -> Months.yearMonth(row.month()).toString())
                .text("figure", "the figure", Restatement::figure)
                .number("sealed", "as it was sealed", Restatement::sealed)
                .number("now", "as the records tell it now", Restatement::now)
                .text("causes", "why", row -> String.join("; ", row.causes()));
    }

    private static String key(Ledger ledger, int repairType) {
        return ledger.repairTypes().name(repairType);
    }

    private static String ofBook(Ledger ledger, int repairType, Function<RepairType, String> what) {
        return ledger.books()
                .type(key(ledger, repairType), ledger.asOf())
                .map(what)
                .orElse("");
    }
}
