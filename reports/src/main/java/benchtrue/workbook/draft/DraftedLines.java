package benchtrue.workbook.draft;

import benchtrue.revision.CellFault;
import benchtrue.shop.Sha256;
import benchtrue.workbook.sheet.Grid;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.streaming.SXSSFSheet;

/**
 * The digest of the lines with a condition as they were drafted, in a named cell beside them: nothing but the owner's own cells
 * may change, since a condition that is another by a letter would hold for other instruments, or none. Mutable: lines are added.
 */
final class DraftedLines {
    private static final String NAME = "DraftedLines";
    private static final int VALUE_COLUMN = 5;

    private final List<String> lines = new ArrayList<>();

    /** Adds a line by the cells that are not the owner's. */
    void add(String... cells) {
        lines.add(
                String.join(" | ", cells).replaceAll("\\s+", " ").strip()); // Programs write line ends and spaces anew.
    }

    private String digest() {
        return Sha256.of(String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    }

    void write(SXSSFSheet sheet, Grid grid, int row) {
        grid.row(row).text("Draft (do not change)").at(VALUE_COLUMN).text(digest());
        Name name = sheet.getWorkbook().createName();
        name.setNameName(NAME);
        name.setRefersToFormula(sheet.getSheetName() + "!$F$" + row);
    }

    /** Returns the fault that the lines are not those that were drafted. */
    Optional<CellFault> fault(DecidedCells cells) {
        DecidedCells.Value drafted = cells.named(NAME);
        return drafted.text().equals(digest())
                ? Optional.empty()
                : Optional.of(new CellFault(
                        SurchargesSheet.NAME,
                        drafted.address(),
                        "",
                        "lines that are not as they were drafted",
                        "no cell changed but the yellow ones; decide in the newest workbook"));
    }
}
