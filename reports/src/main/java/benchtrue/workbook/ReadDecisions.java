package benchtrue.workbook;

import benchtrue.format.Words;
import benchtrue.revision.DecidedDraft;
import benchtrue.revision.Decision;
import benchtrue.shop.Absent;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.UnsupportedFileFormatException;
import org.apache.poi.ooxml.POIXMLException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Reads the owner's decisions back from the drafted workbook, saved as .xlsx by any spreadsheet program. */
public final class ReadDecisions {
    /**
     * Returns what was decided, row by row.
     *
     * @throws Refusal naming the cell, where it can't be used or does not add up with the rest of its row
     */
    public DecidedDraft read(Path file) {
        try (InputStream bytes = Files.newInputStream(file);
                XSSFWorkbook workbook = new XSSFWorkbook(bytes)) {
            Sheet sheet = workbook.getSheet(DecideSheet.NAME);
            if (sheet == null) {
                throw notADraft(file, "no sheet named " + DecideSheet.NAME, null);
            }
            CellWriter cells = new CellWriter(file.toString(), workbook, sheet);
            cells.expectHeadings(DecideSheet.FIRST_ROW - 1);
            return new DecidedDraft(
                    cells.named(DecideInputs.Input.DRAFT_DIGEST.title()).text(),
                    file.toString(),
                    rows(cells, sheet, RowPrices.of(cells, workbook, file.toString())));
        } catch (java.nio.file.NoSuchFileException e) {
            throw new Refusal(
                    ExitCode.MISSING, file + ": found no such file, expected the workbook you decided in.", e);
        } catch (UnsupportedFileFormatException | POIXMLException | OpenXML4JRuntimeException e) {
            throw notADraft(file, "something else", e);
        } catch (IOException e) {
            throw new Refusal(ExitCode.READ_FAILED, file + ": reading failed: " + e.getMessage() + ".", e);
        }
    }

    private static Refusal notADraft(Path file, String found, Exception cause) {
        return new Refusal(
                ExitCode.UNUSABLE_FILE,
                file + ": found " + found + ", expected the workbook " + WriteRevisionWorkbook.FILE
                        + " of a night's results, saved as .xlsx without a password.",
                cause);
    }

    private static List<Decision> rows(CellWriter cells, Sheet sheet, RowPrices prices) {
        List<Decision> decisions = new ArrayList<>();
        for (int number = DecideSheet.FIRST_ROW; number <= sheet.getLastRowNum() + 1; number++) {
            Row row = sheet.getRow(number - 1);
            if (row != null && !cells.at(row, DecideColumn.KEY).text().isBlank()) {
                decisions.add(new DecidedRow(
                                cells,
                                row,
                                prices.of(cells.at(row, DecideColumn.FAMILY).text()))
                        .decision());
            }
        }
        return decisions;
    }

    /** One row as the owner left it, checked against what its formulas should give. */
    private record DecidedRow(CellWriter cells, Row row, RowPrices.By prices) {
        private static final double NEAR = 0.006;

        Decision decision() {
            CellWriter.Value chosen = cells.at(row, DecideColumn.DECISION);
            Decision.Choice choice = chosen.text().isBlank()
                    ? Decision.Choice.OPEN
                    : Words.parse(Decision.Choice.class, chosen.text())
                            .filter(c -> c != Decision.Choice.OPEN)
                            .orElseThrow(() -> chosen.unexpected("take, keep, own or nothing"));
            double hours = newHours(choice);
            expect(DecideColumn.NEW_HOURS, hours);
            double price = newPrice(hours);
            expect(DecideColumn.NEW_PRICE, price);
            CellWriter.Value until = cells.at(row, DecideColumn.UNTIL);
            return new Decision(
                    cells.at(row, DecideColumn.KEY).text(),
                    choice,
                    Amounts.seconds(hours),
                    Amounts.tenThousandths(price),
                    cells.at(row, DecideColumn.REASON).text().strip(),
                    until.isEmpty() ? Absent.DAY : Amounts.day(until.number()),
                    chosen.address());
        }

        private double newHours(Decision.Choice choice) {
            return switch (choice) {
                case TAKE -> number(DecideColumn.PROPOSED);
                case OWN -> number(DecideColumn.OWN_HOURS);
                case OPEN, KEEP -> number(DecideColumn.HOURS);
            };
        }

        /** The same rule as the sheet's formula. */
        private double newPrice(double hours) {
            double today = number(DecideColumn.HOURS);
            double price = number(DecideColumn.PRICE);
            if (Math.abs(hours - today) < 1e-4) {
                return price;
            }
            double rounded =
                    Math.floor(Math.rint(hours * prices.rate() * 1e4) / 1e4 / prices.step() + 0.5) * prices.step();
            double sameWay = hours > today ? Math.max(price, rounded) : Math.min(price, rounded);
            return Math.max(number(DecideColumn.LEAST_PRICE), sameWay);
        }

        private double number(DecideColumn column) {
            return cells.at(row, column).number();
        }

        private void expect(DecideColumn column, double value) {
            CellWriter.Value found = cells.at(row, column);
            if (Math.abs(found.number() - value) > NEAR) {
                throw found.unexpected(Amounts.plain(value)
                        + " by what stands in its row (recalculate the workbook and save it again)");
            }
        }
    }
}
