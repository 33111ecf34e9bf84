package benchtrue.workbook.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A workbook that was mailed, copied and saved by who knows what becomes the book that was decided, or none. */
class DamagedDecisionsTest {
    @TempDir
    Path folder;

    @Test
    void aDamagedWorkbookBecomesTheBookThatWasDecidedOrIsRefusedByName() throws IOException {
        DamagedDecisions decisions = DamagedDecisions.onRepairs(folder);
        decisions.damage(0, 200);
        assertThat(decisions.refused()).isBetween(20, 190);
    }

    @Test
    void aDamagedLineForBanjosIsAdoptedAsItWasDraftedOrIsRefusedByName() throws IOException {
        DamagedDecisions decisions = DamagedDecisions.onALineWithACondition(folder);
        decisions.damage(0, 200);
        assertThat(decisions.refused()).isBetween(20, 190);
    }

    /** In parts: {@code -Dbenchtrue.damaged.from=5000 -Dbenchtrue.damaged.files=5000}. */
    @Test
    @Tag("proof")
    void twentyThousandDamagedWorkbooksBecomeTheBookThatWasDecidedOrAreRefusedByName() throws IOException {
        damageMany(DamagedDecisions.onRepairs(folder));
    }

    @Test
    @Tag("proof")
    void twentyThousandDamagedLinesForBanjosAreAdoptedAsDraftedOrRefusedByName() throws IOException {
        damageMany(DamagedDecisions.onALineWithACondition(folder));
    }

    private static void damageMany(DamagedDecisions decisions) throws IOException {
        int from = Integer.getInteger("benchtrue.damaged.from", 200);
        int files = Integer.getInteger("benchtrue.damaged.files", 20_000);
        decisions.damage(from, from + files);
        System.out.println(files + " damaged, " + decisions.refused() + " refused, the others as decided");
        assertThat(decisions.refused()).isBetween(files / 10, files - files / 20);
    }

    /** The parser of workbooks would fetch the file, or grow without end, before anybody looks at a cell. */
    @Test
    void aWorkbookThatAsksForAnotherFileOrGrowsWithoutEndIsRefusedAndNothingIsRead() throws IOException {
        DamagedDecisions decisions = DamagedDecisions.onRepairs(folder);
        Path secret = Files.writeString(folder.resolve("secret.txt"), "till code 1234");
        StringBuilder growing = new StringBuilder("<!ENTITY a0 \"aaaaaaaaaa\">");
        for (int i = 1; i < 12; i++) {
            growing.append("<!ENTITY a" + i + " \"" + ("&a" + (i - 1) + ";").repeat(10) + "\">");
        }
        for (String entities : List.of("<!ENTITY a11 SYSTEM \"" + secret.toUri() + "\">", growing.toString())) {
            for (String part :
                    List.of("xl/workbook.xml", "xl/worksheets/sheet1.xml", "xl/sharedStrings.xml", "xl/styles.xml")) {
                assertThat(decisions.refusalOf(part, entities))
                        .as(part)
                        .contains("decided.xlsx")
                        .doesNotContain("till code");
            }
        }
    }
}
