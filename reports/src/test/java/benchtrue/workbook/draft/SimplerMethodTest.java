package benchtrue.workbook.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchtrue.InventedShop;
import benchtrue.ReviewOf;
import benchtrue.ShopSettings;
import benchtrue.nightly.Review;
import benchtrue.revision.BackTest;
import benchtrue.revision.PastMethod;
import benchtrue.revision.ProposalInputs;
import benchtrue.revision.ProposedChange;
import benchtrue.revision.Revision;
import benchtrue.settings.Policy;
import benchtrue.shop.Hours;
import benchtrue.tables.WriteTables;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where proposals fell back to a simpler method, the draft says which and why, and the owner may choose the own one. */
class SimplerMethodTest {
    private static final double SIMPLER = 1.1;

    @TempDir
    Path folder;

    /** Returns a draft by the program's own method. */
    private static Review own() {
        Review usual = InventedShop.review();
        Policy d = usual.settings().policy();
        Policy never = new Policy(d.rule(), d.coverage(), d.largestStep(), d.priceRounding(), Policy.FallBack.NEVER);
        return ReviewOf.ledger(
                usual.ledger(), new ShopSettings(usual.settings()).policy(never).build());
    }

    private static ProposedChange fallenBack(ProposedChange own) {
        ProposalInputs g = own.grounds();
        ProposalInputs grounds = new ProposalInputs(
                g.ownFactor(),
                SIMPLER,
                g.meanFactor(),
                g.fits(),
                g.level(),
                g.sureDown(),
                g.sureUp(),
                g.jobsAYear(),
                g.lowestSeconds(),
                g.highestSeconds(),
                g.shortening());
        return new ProposedChange(
                own.repairType(),
                own.bookSeconds(),
                own.proposedSeconds(),
                own.bookLabour(),
                own.proposedLabour(),
                own.coverageBefore(),
                own.coverageAfter(),
                own.annualEffect(),
                own.basis(),
                own.heldBecause(),
                grounds,
                own.verdict());
    }

    private static Review fallenBack(Review own) {
        List<ProposedChange> changes = own.revision().changes().stream()
                .map(SimplerMethodTest::fallenBack)
                .toList();
        Revision revision = new Revision(
                changes,
                own.revision().lastChange(),
                new BackTest(List.of(), own.settings().policy().rule(), PastMethod.PLAIN_AVERAGE, "tried"),
                own.revision().surcharges(),
                own.revision().conditions(),
                own.revision().sizeLines(),
                own.revision().coming());
        return ReviewOf.found(own.settings(), own.costs(), own.findings(), revision);
    }

    private XSSFWorkbook draft(Review review) throws IOException {
        Files.writeString(folder.resolve(WriteTables.REVISION), "repair_type\n");
        new WriteRevisionWorkbook().write(review, folder);
        return new XSSFWorkbook(Files.newInputStream(folder.resolve(WriteRevisionWorkbook.FILE)));
    }

    private static Cell method(XSSFWorkbook workbook) {
        CellReference place = new CellReference(workbook.getName("Method").getRefersToFormula());
        return workbook.getSheet(DecideSheet.NAME).getRow(place.getRow()).getCell(place.getCol());
    }

    private static double number(Row row, DecideColumn column) {
        return row.getCell(column.ordinal()).getNumericCellValue();
    }

    @Test
    void theSheetSaysWhichAndWhyAndItsFormulasFollowTheChoice() throws IOException {
        Review own = own();
        Review fallen = fallenBack(own);
        try (XSSFWorkbook workbook = draft(fallen)) {
            Cell method = method(workbook);
            assertThat(method.getStringCellValue()).isEqualTo("simpler");
            assertThat(method.getCellStyle().getLocked()).isFalse();
            assertThat(method.getRow().getCell(7).getStringCellValue())
                    .contains("plain average of the last 12 months", "missed by less", "Type own");
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            List<ProposedChange> drafted = fallen.answers().drafted();
            for (int i = 0; i < drafted.size(); i++) {
                Row row = workbook.getSheet(DecideSheet.NAME).getRow(DecideSheet.FIRST_ROW - 1 + i);
                assertThat(number(row, DecideColumn.ASKED))
                        .isCloseTo(number(row, DecideColumn.HOURS) * SIMPLER, within(1e-6));
            }
            method.setBlank();
            method.setCellValue("own");
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            for (int i = 0; i < drafted.size(); i++) {
                Row row = workbook.getSheet(DecideSheet.NAME).getRow(DecideSheet.FIRST_ROW - 1 + i);
                assertThat(number(row, DecideColumn.PROPOSED))
                        .isCloseTo(Hours.of(drafted.get(i).proposedSeconds()), within(1e-6));
            }
        }
    }

    @Test
    void aDraftByTheOwnMethodHasNothingToChoose() throws IOException {
        try (XSSFWorkbook workbook = draft(own())) {
            assertThat(method(workbook).getStringCellValue()).isEqualTo("own");
            assertThat(method(workbook).getCellStyle().getLocked()).isTrue();
        }
    }
}
