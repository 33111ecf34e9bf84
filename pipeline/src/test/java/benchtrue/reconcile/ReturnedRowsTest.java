package benchtrue.reconcile;

import static org.assertj.core.api.Assertions.assertThat;

import benchtrue.ShopFolder;
import benchtrue.intake.columns.Table;
import benchtrue.tables.WriteSetAside;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReturnedRowsTest {
    private static final String SOURCE = "source_file,source_line,source_digest,reasons,";
    private static final String LOG = "entry,ticket,technician,work_date,hours";

    @TempDir
    Path folder;

    private ShopFolder withBadHours() {
        return new ShopFolder(folder).file("exports/time-log.csv", LOG, "E1,T1,Ada,2026-03-03,two");
    }

    private static String source(ShopFolder shop) {
        SetAsideRow row = ShopFolder.setAside(shop.reconciled()).get(0);
        return row.file() + "," + row.line() + "," + row.digest() + ",,";
    }

    @Test
    void aPriceBookRowComesBackThroughTheInboxIntoItsVersion() {
        ShopFolder shop = new ShopFolder(folder)
                .file(
                        "price-book/2026-06-01.csv",
                        "repair_type,title,family,book_hours,book_labour",
                        "refret,Refret,fretwork,12,1200",
                        "setup,Setup,setup,one,150");
        String source = source(shop);
        Reconciled result = shop.file(
                        "exports/price-book-corrected.csv",
                        SOURCE + "repair_type,title,family,book_hours,book_labour",
                        source + "setup,Setup,setup,1.75,175")
                .reconciled();
        assertThat(result.setAside().tables()).isEmpty();
        assertThat(result.ledger().books().versions()).hasSize(2);
        assertThat(result.ledger()
                        .books()
                        .versions()
                        .get(1)
                        .type("setup")
                        .orElseThrow()
                        .bookSeconds())
                .isEqualTo(6_300);
    }

    @Test
    void ofTwoCorrectionsOfOneRowTheLaterFileCounts() {
        ShopFolder shop = withBadHours();
        String source = source(shop);
        Reconciled result = shop.file(
                        "exports/time-log-fixed-2026-03-10.csv", SOURCE + LOG, source + "E1,T1,Ada,2026-03-03,2")
                .file("exports/time-log-fixed-2026-03-11.csv", SOURCE + LOG, source + "E1,T1,Ada,2026-03-03,3")
                .reconciled();
        assertThat(result.ledger().time().size()).isEqualTo(1);
        assertThat(result.ledger().time().seconds(0)).isEqualTo(10_800);
    }

    @Test
    void aCorrectionThatIsStillWrongIsSetAsideAndCanComeBackAgain() {
        ShopFolder shop = withBadHours();
        shop.file("exports/time-log-fixed.csv", SOURCE + LOG, source(shop) + "E1,T1,Ada,2026-03-03,three");
        String again = source(shop);
        assertThat(again).startsWith("exports/time-log-fixed.csv,2,");
        Reconciled result = shop.file(
                        "exports/time-log-fixed-twice.csv", SOURCE + LOG, again + "E1,T1,Ada,2026-03-03,3")
                .reconciled();
        assertThat(result.setAside().tables()).isEmpty();
        assertThat(result.ledger().time().seconds(0)).isEqualTo(10_800);
    }

    @Test
    void aRowThatSaysItCameFromItselfIsANewRow() {
        ShopFolder shop = withBadHours();
        shop.file("exports/time-log-fixed.csv", SOURCE + LOG, "nowhere,1,0,,E2,T1,Ada,2026-03-03,x");
        SetAsideRow row = ShopFolder.setAside(shop.reconciled()).stream()
                .filter(aside -> aside.file().contains("fixed"))
                .findFirst()
                .orElseThrow();
        Reconciled result = shop.file(
                        "exports/time-log-fixed.csv",
                        SOURCE + LOG,
                        "exports/time-log-fixed.csv,2," + row.digest() + ",,E2,T1,Ada,2026-03-03,x")
                .reconciled();
        assertThat(result.setAside().count(Table.TIME_LOG)).isEqualTo(2);
        assertThat(ShopFolder.notice(result, "source-not-found")).isPresent();
    }

    @Test
    void aRowWhoseSourceChangedMeanwhileIsANewRow() {
        ShopFolder shop = withBadHours();
        String source = source(shop);
        Reconciled result = shop.file("exports/time-log.csv", LOG, "E1,T1,Ada,2026-03-03,4")
                .file("exports/time-log-fixed.csv", SOURCE + LOG, source + "E1,T1,Ada,2026-03-03,2")
                .reconciled();
        assertThat(result.ledger().time().size()).isEqualTo(1);
        assertThat(ShopFolder.notice(result, "source-not-found")).isPresent();
    }

    @Test
    void textThatASpreadsheetWouldRunComesBackAsItWas() throws IOException {
        ShopFolder shop = new ShopFolder(folder)
                .file(
                        "exports/time-log.csv",
                        LOG,
                        "E1,=T1,Ada,2026-03-03,-2",
                        "-E2,'=T1,\"A\"\"da, \nB\",2026-03-03,-2");
        Reconciled before = shop.reconciled();
        new WriteSetAside().write(before.setAside(), folder.resolve("out"));
        Files.copy(folder.resolve("out/time-log.csv"), folder.resolve("exports/time-log-put-back.csv"));
        assertThat(ShopFolder.setAside(shop.reconciled()))
                .extracting(SetAsideRow::texts)
                .isEqualTo(ShopFolder.setAside(before).stream()
                        .map(SetAsideRow::texts)
                        .toList());
    }

    /** The letter is two units wide, and the text is cut for the message in the midst of it. */
    @Test
    void aTextThatIsCutWithinALetterIsToldAndWrittenAsWholeLetters() throws IOException {
        String violin = new String(Character.toChars(0x1F3BB));
        ShopFolder shop = new ShopFolder(folder)
                .file("exports/time-log.csv", LOG, "E1,T1,Ada,2026-03-03," + "x".repeat(59) + violin);
        new WriteSetAside().write(shop.reconciled().setAside(), folder.resolve("out"));
        assertThat(Files.readString(folder.resolve("out/time-log.csv")))
                .contains("found \"\"" + "x".repeat(59) + "...\"\"", "x".repeat(59) + violin);
    }
}
