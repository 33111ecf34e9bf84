package benchtrue.workbook.draft;

import benchtrue.revision.CellFault;
import benchtrue.revision.DecidedDraft;
import benchtrue.revision.Decision;
import benchtrue.revision.SurchargeDecision;
import benchtrue.shop.ExitCode;
import benchtrue.shop.Refusal;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Reads the owner's decisions back from the drafted workbook, saved as .xlsx by any spreadsheet program. */
public final class ReadDecisions {
    /**
     * Returns what was decided, row by row, with every cell that can't be used or does not add up with the rest of its row.
     *
     * @throws Refusal where it is not a drafted workbook
     */
    public DecidedDraft read(Path file) {
        byte[] bytes = bytes(file);
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            return read(file, workbook);
        } catch (Refusal e) {
            throw e;
        } catch (IOException | RuntimeException e) { // Whatever the reader of workbooks stumbles over is in the file.
            throw notADraft(file, bytes.length == 0 ? "an empty file" : "something else", e);
        }
    }

    private static byte[] bytes(Path file) {
        try {
            if (Files.isDirectory(file)) {
                throw notADraft(file, "a folder", null);
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw new Refusal(
                    ExitCode.MISSING, file + ": found no such file, expected the workbook you decided in.", e);
        } catch (IOException e) {
            throw new Refusal(ExitCode.READ_FAILED, file + ": reading failed: " + e.getMessage() + ".", e);
        }
    }

    private static DecidedDraft read(Path file, XSSFWorkbook workbook) {
        Sheet sheet = workbook.getSheet(DecideSheet.NAME);
        if (sheet == null) {
            throw notADraft(file, "no sheet named " + DecideSheet.NAME, null);
        }
        DecidedCells cells = new DecidedCells(file.toString(), workbook, sheet);
        cells.expectHeadings(DecideSheet.FIRST_ROW - 1);
        List<CellFault> faults = new ArrayList<>();
        method(cells, faults);
        RowPrices prices = RowPrices.of(cells, workbook, file.toString(), faults);
        return new DecidedDraft(
                cells.named(DecideInputs.Input.DRAFT_DIGEST.title()).text(),
                file.toString(),
                rows(cells, sheet, prices, faults),
                surcharges(file, workbook, prices, faults),
                faults);
    }

    /** The hours to take follow the chosen method by their formulas; another word would leave them where they are unheard. */
    private static void method(DecidedCells cells, List<CellFault> faults) {
        DecidedCells.Value chosen = cells.named(DecideInputs.Input.METHOD.title());
        if (!List.of(DecideInputs.OWN, DecideInputs.SIMPLER).contains(chosen.text())) {
            faults.add(chosen.fault("", "own or simpler"));
        }
    }

    private static List<SurchargeDecision> surcharges(
            Path file, XSSFWorkbook workbook, RowPrices prices, List<CellFault> faults) {
        Sheet sheet = workbook.getSheet(SurchargesSheet.NAME);
        return sheet == null
                ? List.of()
                : SurchargesSheet.read(new DecidedCells(file.toString(), workbook, sheet), sheet, prices, faults);
    }

    private static Refusal notADraft(Path file, String found, Exception cause) {
        return new Refusal(
                ExitCode.UNUSABLE_FILE,
                file + ": found " + found + ", expected the workbook " + WriteRevisionWorkbook.FILE
                        + " of a night's results, saved as .xlsx without a password. Nothing was written.",
                cause);
    }

    private static List<Decision> rows(DecidedCells cells, Sheet sheet, RowPrices prices, List<CellFault> faults) {
        List<Decision> decisions = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        for (int number = DecideSheet.FIRST_ROW; number <= sheet.getLastRowNum() + 1; number++) {
            Row row = sheet.getRow(number - 1);
            if (row == null || cells.at(row, DecideColumn.KEY).isEmpty()) {
                continue;
            }
            DecidedRow decided = new DecidedRow(
                    cells, row, prices.of(cells.at(row, DecideColumn.FAMILY).text()));
            if (!keys.add(cells.at(row, DecideColumn.KEY).text())) {
                decided.fault(DecideColumn.KEY, "each repair in one row");
            }
            decided.decision().ifPresent(decisions::add);
            faults.addAll(decided.faults());
        }
        return decisions;
    }
}
