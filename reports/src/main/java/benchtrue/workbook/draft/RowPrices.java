package benchtrue.workbook.draft;

import benchtrue.revision.CellFault;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;

/** What hours are priced by, as the owner left the inputs: those of the whole shop, and of families where they have their own. */
final class RowPrices {
    private final By shop;
    private final Map<String, By> own = new HashMap<>();
    private final List<CellFault> faults;

    /**
     * How hours become a price.
     *
     * @param rate money a bench hour
     * @param step prices are rounded to a multiple of this
     */
    record By(double rate, double step) {}

    private RowPrices(DecidedCells cells, List<CellFault> faults) {
        this.faults = faults;
        shop = new By(
                above0(cells.named(DecideInputs.Input.SHOP_RATE.title())),
                above0(cells.named(DecideInputs.Input.PRICE_STEP.title())));
    }

    /**
     * Returns the inputs of a drafted workbook; NaN where an input is not an amount above 0.
     *
     * @param faults takes each such cell
     */
    static RowPrices of(DecidedCells cells, Workbook workbook, String file, List<CellFault> faults) {
        RowPrices prices = new RowPrices(cells, faults);
        Sheet families = workbook.getSheet(FamiliesSheet.NAME);
        if (families != null) {
            prices.read(families, new DecidedCells(file, workbook, families));
        }
        return prices;
    }

    private void read(Sheet families, DecidedCells cells) {
        for (int number = FamiliesSheet.FIRST_ROW; number <= families.getLastRowNum() + 1; number++) {
            Row row = families.getRow(number - 1);
            if (row != null && !cells.at(row, 0).isEmpty()) {
                By by = new By(
                        or(cells.at(row, FamiliesSheet.OWN_RATE), shop.rate),
                        or(cells.at(row, FamiliesSheet.OWN_STEP), shop.step));
                own.put(cells.at(row, 0).text(), by);
            }
        }
    }

    private double or(DecidedCells.Value cell, double shop) {
        return cell.isEmpty() ? shop : above0(cell);
    }

    private double above0(DecidedCells.Value cell) {
        if (cell.isNumber() && cell.number() > 0) {
            return cell.number();
        }
        faults.add(cell.fault("", "an amount above 0"));
        return Double.NaN;
    }

    By of(String family) {
        return own.getOrDefault(family, shop);
    }
}
