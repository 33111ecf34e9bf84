package benchtrue.nightly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import benchtrue.ShopBuilder;
import benchtrue.ShopFolder;
import benchtrue.revision.AlreadyDecided;
import benchtrue.revision.ComingBook;
import benchtrue.revision.Kept;
import benchtrue.shop.Absent;
import benchtrue.shop.PriceBook;
import benchtrue.shop.PriceBooks;
import benchtrue.shop.Refusal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DecisionsTest {
    private static final int AS_OF = ShopBuilder.day("2026-10-31");

    @TempDir
    Path folder;

    private final SortedMap<String, String> books = new TreeMap<>();
    private ShopFolder shop;

    @BeforeEach
    void aShop() {
        shop = new ShopFolder(folder);
    }

    private void decided(String effective, String on, String decision, String until) {
        shop.file(
                "decisions/" + effective + ".json",
                "{\"effective\": \"" + effective + "\", \"decided_on\": \"" + on
                        + "\", \"draft_sha256\": \"d\", \"decisions\": [{",
                "  \"repair_type\": \"refret\", \"hours\": \"10.0000\", \"labour\": \"1000.0000\",",
                "  \"decision\": \"" + decision + "\", \"reason\": \"new press\", \"until\": \"" + until + "\"",
                "}]}");
        books.put(effective, "10");
    }

    private Decisions decisions() {
        ShopBuilder builder = new ShopBuilder();
        List<PriceBook> versions = new ArrayList<>(List.of(new PriceBook(
                ShopBuilder.day("2026-01-01"),
                builder.type("refret", 8).build().books().newest().types())));
        books.forEach((effective, hours) -> versions.add(new PriceBook(
                ShopBuilder.day(effective),
                Map.of(
                        "refret",
                        versions.get(0)
                                .type("refret")
                                .orElseThrow()
                                .at(36_000L * Integer.parseInt(hours) / 10, 10_000_000)))));
        return new Decisions(DecisionFiles.of(folder), new PriceBooks(versions), AS_OF);
    }

    @Test
    void aRepairIsKeptUntilTheDayThatTheOwnerNamed() {
        decided("2026-09-01", "2026-08-20", "keep", "2027-06-30");
        assertThat(decisions().already().kept())
                .containsExactly(new Kept("refret", ShopBuilder.day("2027-06-30"), "new press"));
        assertThat(decisions().lastDecided()).isEqualTo(ShopBuilder.day("2026-08-20"));
    }

    @Test
    void theNewestDecisionCounts() {
        decided("2026-09-01", "2026-08-20", "keep", "2027-06-30");
        decided("2026-10-01", "2026-09-20", "own", "");
        assertThat(decisions().already().kept()).isEmpty();
    }

    @Test
    void aDecisionMadeLaterOrWhoseBookWasNeverWrittenDoesNotCount() {
        decided("2026-11-15", "2026-11-01", "keep", "2027-06-30");
        decided("2026-09-01", "2026-08-20", "keep", "2027-06-30");
        books.remove("2026-09-01");
        assertThat(decisions().already()).isEqualTo(AlreadyDecided.NOTHING);
        assertThat(decisions().lastDecided()).isEqualTo(Absent.DAY);
    }

    @Test
    void aRowThatTheBookHasOtherwiseWasNotDecidedAsItStands() {
        decided("2026-09-01", "2026-08-20", "keep", "2027-06-30");
        books.put("2026-09-01", "12");
        assertThat(decisions().already().kept()).isEmpty();
    }

    @Test
    void aBookForADayToComeTellsWhichOfItsRowsWereDecided() {
        decided("2026-12-01", "2026-10-20", "own", "");
        books.put("2027-01-01", "11");
        assertThat(decisions().coming())
                .extracting(book -> book.decided().toString(), ComingBook::decidedOn)
                .containsExactly(
                        tuple("{refret=" + ShopBuilder.day("2026-10-20") + "}", ShopBuilder.day("2026-10-20")),
                        tuple("{}", Absent.DAY));
    }

    @Test
    void whatWasWithdrawnDoesNotCount() {
        decided("2026-12-01", "2026-10-20", "keep", "2027-06-30");
        shop.file(
                "decisions/2026-12-01.withdrawn.json",
                "{\"effective\": \"2026-12-01\", \"withdrawn_on\": \"2026-10-21\", \"withdraws\":",
                " [{\"file\": \"2026-12-01.json\"}]}");
        assertThat(decisions().already().kept()).isEmpty();
        assertThat(decisions().lastDecided()).isEqualTo(Absent.DAY);
    }

    @Test
    void aFileThatIsNotAsItWasWrittenIsRefusedByName() {
        decided("2026-09-01", "2026-08-20", "keep", "in June");
        assertThatThrownBy(() -> decisions())
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll("2026-09-01.json", "Put the file back");
    }

    @Test
    void aRecordFromBeforeThereWereSealsCountsButNotUnderAnotherName() {
        decided("2026-09-01", "2026-08-20", "keep", "2027-06-30");
        assertThat(decisions().already().kept()).hasSize(1);
        shop.file(
                "decisions/2026-09-01.json",
                "{\"effective\": \"2026-09-01\", \"decided_on\": \"2026-08-20\", \"draft_sha256\": \"d\",",
                " \"sha257\": \"x\", \"decisions\": []}");
        assertThatThrownBy(this::decisions)
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll("2026-09-01.json", "sha257");
    }
}
