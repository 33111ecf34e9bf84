package benchtrue.workbook.draft;

import benchtrue.format.Words;
import benchtrue.nightly.Review;
import benchtrue.revision.CellFault;
import benchtrue.revision.Decision;
import benchtrue.revision.ProposedSurcharge;
import benchtrue.revision.SurchargeDecision;
import benchtrue.shop.Hours;
import benchtrue.shop.Money;
import benchtrue.shop.RepairType;
import benchtrue.shop.Surcharge;
import benchtrue.workbook.sheet.Amounts;
import benchtrue.workbook.sheet.CellStyles;
import benchtrue.workbook.sheet.Grid;
import benchtrue.workbook.sheet.Heading;
import benchtrue.workbook.sheet.TextHeight;
import benchtrue.workbook.sheet.TypedCells;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/** Lines of the book that hold on a condition, one a row: what is drafted, what stands, and what the owner decides on each. */
final class SurchargesSheet {
    static final String NAME = "Surcharges";
    static final int FIRST_ROW = 5;
    static final int DECISION = 5;
    private static final int OWN_HOURS = 6;
    private static final int NEW_HOURS = 7;
    private static final int NEW_PRICE = 8;
    private static final int REPAIR_TYPE = 9;
    private static final int WHEN = 10;
    private static final int FAMILY = 11;
    private static final double MOST_HOURS = 2000;
    private static final List<Heading> HEADINGS = List.of(
            Heading.text("Repair, and when the line holds", 44),
            Heading.figure("Hours beside the repair's", 10),
            Heading.figure("Price beside the repair's", 10),
            Heading.figure("Jobs", 7),
            Heading.note("On what it stands", 46),
            Heading.note("Decision: take, own or drop", 12),
            Heading.note("Own hours", 8),
            Heading.figure("New hours", 9),
            Heading.figure("New price", 10),
            Heading.note("In the price book as", 18),
            Heading.note("When", 20),
            Heading.note("Family", 12));
    private static final String HOURS_FORMULA =
            "IF($F#=\"take\",$B#,IF(AND($F#=\"own\",ISNUMBER($G#)),$G#,IF($F#=\"drop\",0,%s)))";
    private static final String PRICE_FORMULA =
            "IF(ABS($H#-$B#)<0.0001,$C#,INT(ROUND($H#*ShopRate,4)/PriceStep+0.5)*PriceStep)";

    private SurchargesSheet() {}

    static void write(Review review, FamiliesSheet families, SXSSFSheet sheet, CellStyles look) {
        Grid grid = new Grid(sheet, look);
        List<ProposedSurcharge> lines = review.revision().conditions();
        grid.row(1).text("Lines of the book that hold on a condition", CellStyles.Kind.TITLE);
        grid.row(2)
                .text(
                        lines.isEmpty()
                                ? "No class, trait or age of an instrument surely makes a repair longer."
                                : "A job with the condition is quoted at the repair's hours and these together. Take a drafted"
                                        + " line, give it own hours, or drop one that stands; empty leaves things as they are.");
        if (!lines.isEmpty()) {
            DraftedLines drafted = new DraftedLines();
            lines.forEach(proposed -> drafted.add(
                    proposed.line().title(),
                    Amounts.plain(Hours.of(proposed.line().seconds())),
                    Amounts.plain(Money.units(proposed.line().labour())),
                    proposed.line().repairType(),
                    proposed.line().when(),
                    family(review, proposed.line())));
            drafted.write(sheet, grid, FIRST_ROW - 2);
        }
        Heading.write(HEADINGS, FIRST_ROW - 1, sheet, grid);
        int row = FIRST_ROW;
        for (ProposedSurcharge line : lines) {
            write(review, families, line, row, grid.row(row));
            row++;
        }
        if (!lines.isEmpty()) {
            rules(sheet, row - 1);
        }
    }

    private static void write(Review review, FamiliesSheet families, ProposedSurcharge proposed, int row, Grid grid) {
        Surcharge line = proposed.line();
        String family = family(review, line);
        double stays = proposed.standing() ? Hours.of(line.seconds()) : 0;
        grid.tall(TextHeight.of(proposed.basis() + line.title(), 60))
                .text(line.title(), CellStyles.Kind.WRAPPED)
                .number(Hours.of(line.seconds()), CellStyles.Kind.HOURS)
                .number(Money.units(line.labour()), CellStyles.Kind.MONEY)
                .number(proposed.standing() ? Double.NaN : proposed.jobs(), CellStyles.Kind.COUNT)
                .text(proposed.basis(), CellStyles.Kind.NOTE)
                .empty(CellStyles.Kind.ENTRY)
                .empty(CellStyles.Kind.ENTRY_HOURS)
                .formula(
                        at(String.format(Locale.ROOT, HOURS_FORMULA, proposed.standing() ? "$B#" : "0"), row, Map.of()),
                        stays,
                        CellStyles.Kind.HOURS)
                .formula(
                        at(PRICE_FORMULA, row, families.cells(family)),
                        proposed.standing() ? Money.units(line.labour()) : 0,
                        CellStyles.Kind.MONEY)
                .text(line.repairType(), CellStyles.Kind.NOTE)
                .text(line.when(), CellStyles.Kind.NOTE)
                .text(family, CellStyles.Kind.NOTE);
    }

    private static String family(Review review, Surcharge line) {
        return review.revision()
                .against(review.ledger())
                .type(line.repairType())
                .map(RepairType::family)
                .orElse("");
    }

    private static String at(String template, int row, Map<String, String> family) {
        String formula = template;
        for (Map.Entry<String, String> input : family.entrySet()) {
            formula = formula.replace(input.getKey(), input.getValue());
        }
        return formula.replace("#", Integer.toString(row));
    }

    private static void rules(SXSSFSheet sheet, int lastRow) {
        TypedCells.oneOf(
                sheet,
                new CellRangeAddressList(FIRST_ROW - 1, lastRow - 1, DECISION, DECISION),
                "take, own or drop; empty leaves the row as it is",
                "take",
                "own",
                "drop");
        sheet.enableLocking();
    }

    /** Returns what was decided on the sheet; nothing where the workbook has none. */
    static List<SurchargeDecision> read(DecidedCells cells, Sheet sheet, RowPrices prices, List<CellFault> faults) {
        List<SurchargeDecision> decided = new ArrayList<>();
        DraftedLines drafted = new DraftedLines();
        for (int number = FIRST_ROW; number <= sheet.getLastRowNum() + 1; number++) {
            Row row = sheet.getRow(number - 1);
            if (row != null && !cells.at(row, REPAIR_TYPE).isEmpty()) {
                drafted.add(Stream.of(0, 1, 2, REPAIR_TYPE, WHEN, FAMILY)
                        .map(column -> cells.at(row, column).text())
                        .toArray(String[]::new));
                read(cells, row, prices.of(cells.at(row, FAMILY).text()), faults)
                        .ifPresent(decided::add);
            }
        }
        if (!decided.isEmpty()) {
            drafted.fault(cells).ifPresent(faults::add);
        }
        return decided;
    }

    private static Optional<SurchargeDecision> read(
            DecidedCells cells, Row row, RowPrices.By prices, List<CellFault> faults) {
        String title = cells.at(row, 0).text();
        DecidedCells.Value chosen = cells.at(row, DECISION);
        Optional<SurchargeDecision.Choice> choice = Words.parse(SurchargeDecision.Choice.class, chosen.text());
        if (choice.isEmpty()) {
            if (!chosen.isEmpty() || !cells.at(row, OWN_HOURS).isEmpty()) {
                faults.add(chosen.fault(title, "take, own or drop, or nothing at all beside it"));
            }
            return Optional.empty();
        }
        double drafted = number(cells, row, 1);
        double hours = switch (choice.get()) {
            case TAKE -> drafted;
            case OWN -> number(cells, row, OWN_HOURS);
            case DROP -> 0;
        };
        double price = Math.abs(hours - drafted) < 1e-4 ? number(cells, row, 2) : price(hours, prices);
        if (!(hours >= 0 && hours <= MOST_HOURS)) {
            faults.add(cells.at(row, OWN_HOURS).fault(title, "bench hours from 0.05 to 2000"));
        } else if (!(Math.abs(number(cells, row, NEW_HOURS) - hours) <= DecidedRow.NEAR)
                || !(Math.abs(number(cells, row, NEW_PRICE) - price) <= DecidedRow.NEAR)) {
            faults.add(cells.at(row, NEW_PRICE)
                    .fault(
                            title,
                            Amounts.plain(price)
                                    + " by what stands in its row (recalculate the workbook and save it again)"));
        } else {
            return Optional.of(new SurchargeDecision(
                    new Surcharge(
                            cells.at(row, REPAIR_TYPE).text(),
                            cells.at(row, WHEN).text(),
                            Amounts.seconds(hours),
                            Amounts.tenThousandths(price),
                            title),
                    choice.get(),
                    title,
                    new Decision.Cell(NAME, chosen.address())));
        }
        return Optional.empty();
    }

    private static double price(double hours, RowPrices.By prices) {
        return Math.floor(Math.rint(hours * prices.rate() * 1e4) / 1e4 / prices.step() + 0.5) * prices.step();
    }

    private static double number(DecidedCells cells, Row row, int column) {
        return cells.at(row, column).isNumber() ? cells.at(row, column).number() : Double.NaN;
    }
}
