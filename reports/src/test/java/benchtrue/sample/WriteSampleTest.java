package benchtrue.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
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

    /** Regenerate with {@link WriteShop} into an empty folder when this fails for a reason. */
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
                        "datapackage.json",
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

    @Test
    void oneRepairGetsSlowerFromAKnownDateAndOnlyWhereThatIsWanted() throws IOException {
        Truth slow = WriteSample.write(
                options("slow").with(Tidiness.TIDY).withTickets(4_000).with(Slowing.SLIGHT));
        Truth steady = WriteSample.write(
                options("steady").with(Tidiness.TIDY).withTickets(4_000).with(Slowing.NONE));
        assertThat(slow.slowType()).isEqualTo("nut-replace");
        assertThat(slower(slow, "slow")).isCloseTo(1.3, within(0.08));
        assertThat(steady.slowType()).isEmpty();
        assertThat(slower(steady, "steady")).isCloseTo(1, within(0.08));
    }

    /** Worked over quoted hours of making a nut since the date over the same before it. */
    private double slower(Truth truth, String name) throws IOException {
        Map<String, String> opened = Exports.table(folder.resolve(name), "tickets").stream()
                .collect(Collectors.toMap(row -> row.get("ticket"), row -> row.get("opened")));
        double[] worked = new double[2];
        double[] quoted = new double[2];
        for (LineTruth line : truth.lines()) {
            if (line.judged() && line.repairType().equals("nut-replace")) {
                int since = LocalDate.parse(opened.get(line.ticket())).isBefore(truth.slowFrom()) ? 0 : 1;
                worked[since] += line.workedSeconds();
                quoted[since] += line.rebasedSeconds();
            }
        }
        return worked[1] / quoted[1] / (worked[0] / quoted[0]);
    }

    @Test
    void theShopTakesInMoreWorkEveryYearWhereItGrows() throws IOException {
        WriteSample.write(options("grows").withYearlyGrowth(0.5).withTickets(600));
        WriteSample.write(options("constant").withYearlyGrowth(0).withTickets(600));
        assertThat(lastYearOverFirst("grows")).isBetween(2.8, 4.0);
        assertThat(lastYearOverFirst("constant")).isBetween(0.95, 1.05);
    }

    private double lastYearOverFirst(String name) throws IOException {
        double first = 0;
        double last = 0;
        Set<String> seen = new HashSet<>();
        for (CSVRecord row : Exports.table(folder.resolve(name), "tickets")) {
            if (row.get("ticket").startsWith("B-") && seen.add(row.get("ticket"))) {
                first += row.get("opened").compareTo("2023-11-01") < 0 ? 1 : 0;
                last += row.get("opened").compareTo("2025-11-01") >= 0 ? 1 : 0;
            }
        }
        return last / first;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.6, 0.8, 1})
    void asManyTicketsAreLoggedWholeAsAskedFor(double share) throws IOException {
        Truth truth = WriteSample.write(
                options("shop").with(Tidiness.TIDY).withTickets(3_000).withWholeTicketShare(share));
        Map<String, Integer> worked = new HashMap<>();
        truth.lines().stream()
                .filter(line -> line.loggedSeconds() > 0)
                .forEach(line -> worked.merge(line.ticket(), 1, Integer::sum));
        Map<String, Set<String>> quoted = truth.lines().stream()
                .collect(Collectors.groupingBy(
                        LineTruth::ticket, Collectors.mapping(LineTruth::repairType, Collectors.toSet())));
        Set<String> labelled = new HashSet<>();
        for (CSVRecord row : Exports.table(folder.resolve("shop"), "time-log")) {
            String ticket = row.get("ticket");
            boolean ofItsOwn = quoted.getOrDefault(ticket, Set.of()).contains(row.get("repair_type"));
            if (!row.get("line").isEmpty() || ofItsOwn) {
                labelled.add(ticket);
            }
        }
        List<String> several = worked.keySet().stream()
                .filter(ticket -> worked.get(ticket) > 1)
                .toList();
        double whole =
                several.stream().filter(ticket -> !labelled.contains(ticket)).count();
        // Of the partly labelled tickets some end up without any label.
        assertThat(whole / several.size()).isBetween(share - 0.04, share + 0.06);
    }
}
