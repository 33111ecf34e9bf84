package benchtrue.workbook.review;

import benchtrue.findings.Verdict;
import benchtrue.format.Words;
import benchtrue.hours.SplitEvidence;
import benchtrue.nightly.Review;
import benchtrue.reconcile.Ledger;
import benchtrue.settings.Disclosure;
import benchtrue.shop.Absent;
import benchtrue.shop.QuotedLines;
import benchtrue.shop.RepairType;
import benchtrue.shop.Tickets;
import benchtrue.shop.WaitReason;
import benchtrue.tables.DaysWaited;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.Heading;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What a line can be filtered and grouped by: the last columns of the sheet of lines. */
final class LineFacts {
    /** Column of the month a line's visit was closed in. */
    static final String CLOSED_MONTH = "Y";

    private static final List<Heading> HEADINGS = List.of(
            Heading.note("Repair", 26),
            Heading.text("Family", 12),
            Heading.figure("Month opened", 9),
            Heading.figure("Month closed", 9),
            Heading.figure("Month quoted", 9),
            Heading.figure("Quoted on", 11),
            Heading.note("Who pays", 14),
            Heading.text("Charged for", 12),
            Heading.text("Traits", 26),
            Heading.figure("Built in the decade", 8),
            Heading.figure("Promised", 11),
            Heading.figure("Bench work done", 11),
            Heading.figure("Days in the shop", 7),
            Heading.figure("Days waited", 7));
    private static final List<Heading> LAST = List.of(
            Heading.note("Found on the bench", 8),
            Heading.text("Hours copied from the quote", 9),
            Heading.text("Hours of its own", 8),
            Heading.figure("Quoted by the book of", 11),
            Heading.note("The repair's verdict", 16));

    private final Review review;
    private final Ledger ledger;
    private final DaysWaited days;
    private final List<Optional<RepairType>> types;
    private final Map<Integer, Verdict> verdicts;
    private final boolean people;

    LineFacts(Review review) {
        this.review = review;
        ledger = review.ledger();
        days = new DaysWaited(ledger);
        types = ledger.repairTypes().all().stream()
                .map(key -> ledger.books().type(key, ledger.asOf()))
                .toList();
        verdicts = review.findings().repairs().stream()
                .collect(Collectors.toMap(finding -> finding.repairType(), finding -> finding.verdict()));
        people = review.settings().people() == Disclosure.SHOWN;
    }

    List<Heading> headings() {
        List<Heading> all = new ArrayList<>(HEADINGS);
        Arrays.stream(WaitReason.values())
                .map(reason -> Heading.figure("Waited: " + Words.of(reason) + " (days)", 11))
                .forEach(all::add);
        all.addAll(LAST);
        if (people) {
            all.add(Heading.text("Quote written by", 12));
        }
        return all;
    }

    void write(Grid grid, int line) {
        QuotedLines lines = ledger.lines();
        Tickets tickets = ledger.tickets();
        int ticket = lines.ticket(line);
        grid.text(ofBook(line, RepairType::title), CellStyles.Kind.NOTE)
                .text(ofBook(line, RepairType::family))
                .number(month(tickets.opened(ticket)), CellStyles.Kind.MONTH)
                .number(month(tickets.closed(ticket)), CellStyles.Kind.MONTH)
                .number(month(ledger.quotedOn(line)), CellStyles.Kind.MONTH)
                .number(Amounts.serial(ledger.quotedOn(line)), CellStyles.Kind.DATE)
                .text(Words.of(lines.paidBy(line)), CellStyles.Kind.NOTE)
                .text(Words.of(lines.chargeKind(line)))
                .text(String.join(";", tickets.traits(ticket)))
                .number(decade(tickets.builtYear(ticket)), CellStyles.Kind.YEAR)
                .number(Amounts.serial(tickets.promised(ticket)), CellStyles.Kind.DATE)
                .number(Amounts.serial(tickets.finished(ticket)), CellStyles.Kind.DATE);
        days(grid, ticket);
        judged(grid, line);
        if (people) {
            grid.text(tickets.quotedBy(ticket));
        }
    }

    private String ofBook(int line, Function<RepairType, String> what) {
        return types.get(ledger.lines().repairType(line)).map(what).orElse("");
    }

    private void days(Grid grid, int ticket) {
        grid.number(count(days.inShop(ticket)), CellStyles.Kind.COUNT)
                .number(count(days.waited(ticket)), CellStyles.Kind.COUNT);
        for (WaitReason reason : WaitReason.values()) {
            grid.number(count(days.waited(ticket, reason)), CellStyles.Kind.COUNT);
        }
    }

    private void judged(Grid grid, int line) {
        SplitEvidence evidence = review.jobs().evidence(line);
        Verdict verdict = verdicts.get(ledger.lines().repairType(line));
        grid.text(yes(review.jobs().foundLater(line)), CellStyles.Kind.NOTE)
                .text(yes(review.findings().copiedLines().contains(line)))
                .text(evidence == SplitEvidence.NONE ? "" : yes(evidence == SplitEvidence.LOGGED))
                .number(
                        Amounts.serial(
                                ledger.books().inForce(ledger.quotedOn(line)).effective()),
                        CellStyles.Kind.DATE)
                .text(verdict == null ? "" : verdict.words(), CellStyles.Kind.NOTE);
    }

    private static String yes(boolean is) {
        return is ? "yes" : "no";
    }

    private static double count(long days) {
        return Absent.has(days) ? days : Double.NaN;
    }

    private static double decade(int year) {
        return Absent.has(year) ? Math.floorDiv(year, 10) * 10 : Double.NaN;
    }

    /** Returns the first day of a day's month as the spreadsheet counts it. */
    static double month(int day) {
        return Absent.has(day)
                ? Amounts.serial(
                        (int) LocalDate.ofEpochDay(day).withDayOfMonth(1).toEpochDay())
                : Double.NaN;
    }
}
