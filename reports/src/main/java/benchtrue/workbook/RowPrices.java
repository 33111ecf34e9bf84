package benchtrue.workbook;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;

/** What hours are priced by, as the owner left the inputs: those of the whole shop, and of families where they have their own. */
final class RowPrices {
    private final By shop;
    private final Map<String, By> own = new HashMap<>();

    /**
     * How hours become a price.
     *
     * @param rate money a bench hour
     * @param step prices are rounded to a multiple of this
     */
    record By(double rate, double step) {}

    private RowPrices(CellWriter cells) {
        shop = new By(
                above0(cells.named(DecideInputs.Input.SHOP_RATE.title())),
                above0(cells.named(DecideInputs.Input.PRICE_STEP.title())));
    }

    /**
     * Returns the inputs of a drafted workbook.
     *
     * @throws benchtrue.shop.Refusal naming the cell, where an input is not an amount above 0
     */
    static RowPrices of(CellWriter cells, Workbook workbook, String file) {
        RowPrices prices = new RowPrices(cells);
        Sheet families = workbook.getSheet(FamiliesSheet.NAME);
        if (families != null) {
            prices.read(families, new CellWriter(file, workbook, families));
        }
        return prices;
    }

    private void read(Sheet families, CellWriter cells) {
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

    private static double or(CellWriter.Value cell, double shop) {
        return cell.isEmpty() ? shop : above0(cell);
    }

    private static double above0(CellWriter.Value cell) {
        double number = cell.number();
        if (!(number > 0)) {
            throw cell.unexpected("an amount above 0");
        }
        return number;
    }

    By of(String family) {
        return own.getOrDefault(family, shop);
    }
}
