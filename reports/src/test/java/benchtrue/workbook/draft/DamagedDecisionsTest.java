package benchtrue.workbook.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A workbook that was mailed, copied and saved by who knows what becomes the book that was decided, or none. */
class DamagedDecisionsTest {
    @TempDir
    Path folder;

    private DamagedDecisions decisions;

    @BeforeEach
    void aDecidedWorkbook() throws IOException {
        decisions = new DamagedDecisions(folder);
    }

    @Test
    void aDamagedWorkbookBecomesTheBookThatWasDecidedOrIsRefusedByName() throws IOException {
        decisions.damage(0, 200);
        assertThat(decisions.refused()).isBetween(20, 190);
    }

    /** In parts: {@code -Dbenchtrue.damaged.from=5000 -Dbenchtrue.damaged.files=5000}. */
    @Test
    @Tag("proof")
    void twentyThousandDamagedWorkbooksBecomeTheBookThatWasDecidedOrAreRefusedByName() throws IOException {
        int from = Integer.getInteger("benchtrue.damaged.from", 200);
        int files = Integer.getInteger("benchtrue.damaged.files", 20_000);
        decisions.damage(from, from + files);
        System.out.println(files + " damaged, " + decisions.refused() + " refused, the others as decided");
        assertThat(decisions.refused()).isBetween(files / 10, files - files / 20);
    }
}
