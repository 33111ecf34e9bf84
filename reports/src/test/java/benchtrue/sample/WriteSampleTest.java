package benchtrue.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

final class WriteSampleTest {
    @TempDir
    Path folder;

    private SampleOptions options(String name) {
        return SampleOptions.standard(folder.resolve(name));
    }

    @ParameterizedTest
    @EnumSource(Tidiness.class)
    void theSameSeedGivesTheSameBytes(Tidiness tidiness) throws IOException {
        SampleOptions small = options("a").withTickets(500).with(tidiness);
        WriteSample.write(small);
        WriteSample.write(options("b").withTickets(500).with(tidiness));
        Map<String, byte[]> again = Exports.bytes(folder.resolve("b"));
        Exports.bytes(folder.resolve("a"))
                .forEach((name, bytes) -> assertThat(again.get(name)).as(name).isEqualTo(bytes));
    }

    @Test
    void anotherSeedGivesAnotherShop() throws IOException {
        WriteSample.write(options("a").withTickets(50));
        WriteSample.write(options("b").withTickets(50).withSeed(2));
        assertThat(Exports.bytes(folder.resolve("a")).get("exports/time-log-2024.csv"))
                .isNotEqualTo(Exports.bytes(folder.resolve("b")).get("exports/time-log-2024.csv"));
    }

    /** Regenerate with {@code benchtrue sample} into an empty folder when this fails for a reason. */
    @Test
    void theCommittedSampleIsWhatTheDefaultsWrite() throws IOException {
        WriteSample.write(options("now"));
        Map<String, byte[]> committed = Exports.bytes(Path.of("..", "sample-exports"));
        Map<String, byte[]> now = Exports.bytes(folder.resolve("now"));
        now.forEach((name, bytes) -> assertThat(committed.get(name)).as(name).isEqualTo(bytes));
        assertThat(now.values().stream().mapToLong(bytes -> bytes.length).sum()).isLessThan(3_000_000);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void everyKindOfDirtyRowIsPlanted(long seed) throws IOException {
        Truth truth = WriteSample.write(options("shop").withSeed(seed));
        List<String> wanted = new ArrayList<>(List.of(
                "repeated tickets",
                "repeated quoted-lines",
                "repeated time-log",
                "superseded tickets",
                "superseded quoted-lines",
                "superseded time-log",
                "retyped quote",
                "copied quote",
                "quote blank",
                "quote first-kept",
                "quoted by time",
                "shared session",
                "found work",
                "one-off",
                "visit idle",
                "visit half-finished",
                "visit unclaimed",
                "visit void"));
        for (String kind : List.of("package", "minimum", "evaluation", "rush", "outside-work", "storage")) {
            wanted.add("charge " + kind);
        }
        for (String payer : List.of("trade", "maker-warranty", "goodwill", "house")) {
            wanted.add("paid by " + payer);
        }
        for (String reason : List.of("settling", "our-fault", "part", "new-damage")) {
            wanted.add("back " + reason);
        }
        Arrays.stream(Fault.values())
                .filter(fault -> fault != Fault.NONE)
                .map(Fault::word)
                .forEach(wanted::add);
        assertThat(truth.planted()).as("seed %d", seed).containsKeys(wanted.toArray(String[]::new));
    }

    @Test
    void aTidyShopHasOneBookOneFileATableAndNothingPlanted() throws IOException {
        Truth truth = WriteSample.write(options("shop").with(Tidiness.TIDY));
        for (Fault fault : Fault.values()) {
            assertThat(truth.planted()).doesNotContainKey(fault.word());
        }
        assertThat(truth.planted().keySet())
                .noneMatch(kind -> kind.startsWith("repeated") || kind.startsWith("charge") || kind.contains("quote"));
        assertThat(Exports.bytes(folder.resolve("shop")).keySet())
                .containsExactlyInAnyOrder(
                        "shop.toml",
                        "truth.json",
                        "truth-lines.csv",
                        "price-book/2022-01-01.csv",
                        "exports/tickets.csv",
                        "exports/quoted-lines.csv",
                        "exports/time-log.csv",
                        "exports/parts-usage.csv",
                        "exports/technicians.csv",
                        "exports/overheads.csv",
                        "exports/paid-hours.csv",
                        "exports/waits.csv");
    }

    @Test
    void aTypesTrueLoadIsExactlyWhatWasAskedFor() throws IOException {
        SampleOptions plain = options("one").with(Slowing.NONE).with(Loads.EXACTLY_ONE);
        assertThat(WriteSample.write(plain).types())
                .allSatisfy(type -> assertThat(type.trueLoad()).isCloseTo(1, within(1e-9)));
        SampleOptions half = options("half").with(Tidiness.TIDY).with(Loads.HALF_AT_ONE_AND_A_QUARTER);
        List<TypeTruth> types = WriteSample.write(half).types();
        for (int k = 0; k < types.size(); k++) {
            assertThat(types.get(k).trueLoad()).isCloseTo(k % 2 == 1 ? 1.25 : 1, within(1e-9));
        }
    }

    @Test
    void aFolderThatHoldsAnythingIsLeftAlone() throws IOException {
        Path held = Files.createDirectories(folder.resolve("held"));
        Files.writeString(held.resolve("note.txt"), "mine");
        assertThatThrownBy(() -> WriteSample.write(SampleOptions.standard(held)))
                .isInstanceOf(FileAlreadyExistsException.class)
                .hasMessageContaining("not empty");
        assertThat(Exports.bytes(held)).containsOnlyKeys("note.txt");
    }

    @Test
    void optionsThatMakeNoShopAreRefused() {
        assertThatThrownBy(() -> options("x").withTickets(0)).hasMessageContaining("tickets is 0, expected at least 1");
        assertThatThrownBy(() -> options("x").withYears(41)).hasMessageContaining("years is 41, expected 1 to 40");
        assertThatThrownBy(() -> options("x").withWholeTicketShare(1.1)).hasMessageContaining("expected 0 to 1");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 7, 60})
    void aShopOfAFewTicketsIsWrittenToo(int tickets) throws IOException {
        Truth truth = WriteSample.write(options("shop").withTickets(tickets).withYears(1));
        assertThat(Exports.table(folder.resolve("shop"), "tickets").stream()
                        .map(row -> row.get("ticket"))
                        .distinct())
                .hasSize(tickets);
        assertThat(truth.types()).isNotEmpty();
    }
}
