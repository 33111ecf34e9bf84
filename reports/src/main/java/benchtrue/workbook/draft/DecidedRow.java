package benchtrue.workbook.draft;

import benchtrue.format.Words;
import benchtrue.revision.CellFault;
import benchtrue.revision.Decision;
import benchtrue.shop.Absent;
import benchtrue.workbook.sheet.Amounts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Row;

/** One row as the owner left it, checked against what its formulas should give. Mutable: it gathers its faults. */
final class DecidedRow {
    /** In hours and in money: less than a book holds, so that nothing else is adopted than stands there to be seen. */
    static final double NEAR = 5e-5;

    private static final double LEAST_HOURS = 0.05;
    private static final double MOST_HOURS = 2000;
    private static final double YEAR_2000 = 36_526;
    private static final double YEAR_2200 = 109_575;

    private final DecidedCells cells;
    private final Row row;
    private final RowPrices.By prices;
    private final List<CellFault> faults = new ArrayList<>();

    DecidedRow(DecidedCells cells, Row row, RowPrices.By prices) {
        this.cells = cells;
        this.row = row;
        this.prices = prices;
    }

    List<CellFault> faults() {
        return List.copyOf(faults);
    }

    void fault(DecideColumn column, String expected) {
        faults.add(at(column).fault(at(DecideColumn.REPAIR).text(), expected));
    }

    /** Returns what was decided; empty where a cell of the row can't be used. */
    Optional<Decision> decision() {
        Decision.Choice choice = choice();
        double hours = newHours(choice);
        expect(DecideColumn.NEW_HOURS, hours);
        double price = newPrice(hours);
        expect(DecideColumn.NEW_PRICE, price);
        int until = until();
        if (!faults.isEmpty() || Double.isNaN(price)) {
            return Optional.empty();
        }
        return Optional.of(new Decision(
                at(DecideColumn.KEY).text(),
                at(DecideColumn.REPAIR).text(),
                choice,
                Amounts.seconds(at(DecideColumn.HOURS).number()),
                Amounts.tenThousandths(at(DecideColumn.PRICE).number()),
                Amounts.seconds(hours),
                Amounts.tenThousandths(price),
                at(DecideColumn.REASON).text().strip(),
                until,
                new Decision.Cell(DecideSheet.NAME, at(DecideColumn.DECISION).address())));
    }

    private DecidedCells.Value at(DecideColumn column) {
        return cells.at(row, column);
    }

    private Decision.Choice choice() {
        DecidedCells.Value chosen = at(DecideColumn.DECISION);
        if (chosen.isEmpty()) {
            if (!at(DecideColumn.OWN_HOURS).isEmpty()) {
                fault(DecideColumn.DECISION, "own, since own hours stand beside it, or these emptied");
            }
            return Decision.Choice.OPEN;
        }
        Optional<Decision.Choice> choice =
                Words.parse(Decision.Choice.class, chosen.text()).filter(known -> known != Decision.Choice.OPEN);
        if (choice.isEmpty()) {
            fault(DecideColumn.DECISION, "take, keep, own or nothing");
        }
        return choice.orElse(Decision.Choice.OPEN);
    }

    private double newHours(Decision.Choice choice) {
        return switch (choice) {
            case TAKE -> number(DecideColumn.PROPOSED);
            case OWN -> ownHours();
            case OPEN, KEEP -> number(DecideColumn.HOURS);
        };
    }

    private double ownHours() {
        double hours = number(DecideColumn.OWN_HOURS);
        if (hours < LEAST_HOURS || hours > MOST_HOURS) {
            fault(DecideColumn.OWN_HOURS, "bench hours from 0.05 to 2000");
            return Double.NaN;
        }
        return hours;
    }

    /** Returns the day until which a row is kept; absent where none is named. */
    private int until() {
        DecidedCells.Value cell = at(DecideColumn.UNTIL);
        if (cell.isEmpty()) {
            return Absent.DAY;
        }
        if (!cell.isNumber() || cell.number() < YEAR_2000 || cell.number() > YEAR_2200) {
            fault(DecideColumn.UNTIL, "a date that the spreadsheet program knows as one, such as 2027-06-30");
            return Absent.DAY;
        }
        return Amounts.day(cell.number());
    }

    /** The same rule as the sheet's formula. */
    private double newPrice(double hours) {
        double today = number(DecideColumn.HOURS);
        double price = number(DecideColumn.PRICE);
        if (Math.abs(hours - today) < 1e-4) {
            return price;
        }
        double rounded = Math.floor(Math.rint(hours * prices.rate() * 1e4) / 1e4 / prices.step() + 0.5) * prices.step();
        double sameWay = hours > today ? Math.max(price, rounded) : Math.min(price, rounded);
        return Math.max(number(DecideColumn.LEAST_PRICE), sameWay);
    }

    /** Returns a cell's number; NaN, with a fault told once, where it holds none. */
    private double number(DecideColumn column) {
        if (at(column).isNumber()) {
            return at(column).number();
        }
        if (faults.stream().noneMatch(known -> known.cell().equals(at(column).address()))) {
            fault(column, "a number");
        }
        return Double.NaN;
    }

    private void expect(DecideColumn column, double value) {
        DecidedCells.Value found = at(column);
        if (!Double.isNaN(value) && !(found.isNumber() && Math.abs(found.number() - value) <= NEAR)) {
            fault(
                    column,
                    Amounts.plain(value) + " by what stands in its row (recalculate the workbook and save it again)");
        }
    }
}
