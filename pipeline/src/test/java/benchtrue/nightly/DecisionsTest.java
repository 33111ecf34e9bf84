package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchtrue.ShopBuilder;
import benchtrue.ShopFolder;
import benchtrue.revision.Kept;
import benchtrue.shop.Absent;
import benchtrue.shop.Refusal;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DecisionsTest {
    private static final int AS_OF = ShopBuilder.day("2026-10-31");

    @TempDir
    Path folder;

    private ShopFolder shop;

    @BeforeEach
    void aShop() {
        shop = new ShopFolder(folder);
    }

    private void decided(String effective, String on, String decision, String until) {
        shop.file(
                "decisions/" + effective + ".json",
                "{\"effective\": \"" + effective + "\", \"decided_on\": \"" + on + "\", \"decisions\": [{",
                "  \"repair_type\": \"refret\", \"decision\": \"" + decision
                        + "\", \"reason\": \"new press\", \"until\": \"" + until + "\"",
                "}]}");
        shop.file("price-book/" + effective + ".csv", "repair_type,title,family,book_hours,book_labour");
    }

    @Test
    void aRepairIsKeptUntilTheDayThatTheOwnerNamed() {
        decided("2026-09-01", "2026-08-20", "keep", "2027-06-30");
        assertThat(Decisions.of(folder, AS_OF).kept())
                .containsExactly(new Kept("refret", ShopBuilder.day("2027-06-30"), "new press"));
        assertThat(Decisions.of(folder, AS_OF).lastDecided()).isEqualTo(ShopBuilder.day("2026-08-20"));
    }

    @Test
    void theNewestDecisionCounts() {
        decided("2026-09-01", "2026-08-20", "keep", "2027-06-30");
        decided("2026-10-01", "2026-09-20", "own", "");
        assertThat(Decisions.of(folder, AS_OF).kept()).isEmpty();
    }

    @Test
    void aDecisionMadeLaterOrWhoseBookWasNeverWrittenDoesNotCount() {
        decided("2026-11-15", "2026-11-01", "keep", "2027-06-30");
        decided("2026-09-01", "2026-08-20", "keep", "2027-06-30");
        shop.without("price-book/2026-09-01.csv");
        assertThat(Decisions.of(folder, AS_OF)).isEqualTo(new Decisions(java.util.List.of(), Absent.DAY));
    }

    @Test
    void aFileThatIsNotAsItWasWrittenIsRefusedByName() {
        decided("2026-09-01", "2026-08-20", "keep", "in June");
        assertThatThrownBy(() -> Decisions.of(folder, AS_OF))
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll("2026-09-01.json", "Put the file back");
    }
}
